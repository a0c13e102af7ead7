import { type Places, placesAt } from "../engine/contact/gap.ts";
import type { Pose } from "../engine/contact/problem.ts";
import { type SettleOptions, settle } from "../engine/contact/settle.ts";
import type { GaitFit, NoRest, Rest, Seat } from "./fit.ts";
import { gaitFit, ridgeCm2 } from "./gait-fit.ts";
import type { Mesh } from "./panel-cells.ts";
import { problemOf, type Sitting } from "./problem.ts";
import { type AtPeak, atPeaks, type RiddenPoses } from "./ridden.ts";
import { readOff } from "./seat.ts";
import { type RiderStates, riderStates } from "./states.ts";
import { fieldOf, thirdsOf } from "./thirds.ts";
import { unloadedOf } from "./unloaded.ts";

/** Where a saddle comes to rest, and the pose to start a neighbouring setting from. */
export interface Rested {
  readonly rest: Seat | NoRest;
  readonly pose: Pose | undefined;
  /** The pressures, worked out when they are asked for: no draw needs them. */
  pressed(): Rest | NoRest;
  /** Where the panels' cells lie on the back; undefined where nothing rests. */
  places(): Places | undefined;
  /**
   * The gaits of `sitting.loads` at their peaks, and the poses to start a neighbouring setting's from; none where the
   * saddle does not rest or no loads were read. `near`: a neighbour's. Worked out anew each time.
   */
  ridden(near?: RiddenPoses): Ridden;
  /** Half-seat, risen from the saddle, mounting; undefined where it does not rest or no loads were read. */
  states(): RiderStates | undefined;
}

/** Gaits at their peaks. */
export interface Ridden {
  readonly gaits: readonly GaitFit[];
  readonly poses: RiddenPoses | undefined;
}

export const NOT_RIDDEN: Ridden = { gaits: [], poses: undefined };

/**
 * One tree on one back under weight and girth, at rest. Fore and aft is held (a free slide wanders or tips) and what is
 * left over along x is told. Refused where the saddle tips, is not stable, or is pressed beyond the law.
 */
export function restOf(sitting: Sitting, mesh: Mesh, options: SettleOptions = {}): Rested {
  const problem = problemOf(sitting, mesh);
  const found = settle(problem, options);
  if (!found.ok)
    return {
      rest: found,
      pose: undefined,
      pressed: () => found,
      places: () => undefined,
      ridden: () => NOT_RIDDEN,
      states: () => undefined,
    };
  const seat = readOff(sitting, problem, found);
  const { cells } = problem;
  const unloaded = () => {
    const { tree, back, deviations } = sitting;
    return unloadedOf(tree, back.surface(deviations), problem.slide.x);
  };
  const pressed = (): Rest => ({
    ...seat,
    ...unloaded(),
    thirds: thirdsOf(cells, found.pressure),
    ridgeCm2: ridgeCm2(problem, found),
    field: fieldOf(cells, found.pressure, mesh),
  });
  const ridden = (near?: RiddenPoses): Ridden => {
    if (sitting.loads === undefined) return NOT_RIDDEN;
    const peaks = atPeaks(sitting, sitting.loads, problem, found.pose, near, options);
    return { gaits: peaks.map((peak) => gaitFit(problem, peak)), poses: posesOf(found.pose, peaks) };
  };
  const states = () => sitting.loads && riderStates(sitting, sitting.loads, problem, found.pose);
  return {
    rest: seat,
    pose: found.pose,
    pressed,
    places: () => placesAt(problem, found.pose),
    ridden,
    states,
  };
}

const posesOf = (rest: Pose, peaks: readonly AtPeak[]): RiddenPoses => ({
  rest,
  gaits: peaks.map(({ found }) => (found.ok ? found.pose : undefined)),
});
