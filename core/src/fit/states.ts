import type { Pose } from "../engine/contact/problem.ts";
import { settle } from "../engine/contact/settle.ts";
import { assumedLoad } from "./assumed-loads.ts";
import type { NoRest, Seat, ThirdFit } from "./fit.ts";
import { PEAKS } from "./gaits.ts";
import type { LoadsRead } from "./loads-read.ts";
import { type Mounting, mounting } from "./mounting.ts";
import type { Sitting, SittingProblem } from "./problem.ts";
import { atPeak } from "./ridden.ts";
import { readOff } from "./seat.ts";
import { thirdsOf } from "./thirds.ts";

/** How it lies with the rider in one state. */
export type StateFit =
  | { readonly ok: true; readonly times: number; readonly seat: Seat; readonly thirds: readonly ThirdFit[] }
  | NoRest;

/** The rider out of the saddle, and going up. */
export interface RiderStates {
  /** Standing still in half-seat: the weight, a part of it on the stirrup bars, on a line that does not follow the saddle: the rider balances by himself. */
  readonly halfSeat: StateFit;
  /** The second beat of a rising trot; undefined where the trot is not ridden rising. */
  readonly risen: StateFit | undefined;
  readonly mounting: { readonly ground: Mounting | NoRest; readonly platform: Mounting | NoRest };
}

export function riderStates(
  sitting: Sitting,
  loads: LoadsRead,
  problem: SittingProblem,
  rest: Pose,
): RiderStates {
  const part = assumedLoad("halfSeatPart", sitting.deviations);
  const at = (times: number) => {
    return stateFit(sitting, atPeak(sitting, loads, problem, rest, times, part), times, rest);
  };
  const rises = loads.gaits.some(({ onBars }) => onBars === "risingPart");
  return {
    halfSeat: at(1),
    risen: rises ? at(PEAKS.risen.times) : undefined,
    mounting: {
      ground: mounting(sitting, loads, problem, "ground"),
      platform: mounting(sitting, loads, problem, "platform"),
    },
  };
}

function stateFit(sitting: Sitting, problem: SittingProblem, times: number, start: Pose): StateFit {
  const found = settle(problem, { start });
  if (!found.ok) return found;
  const seat = readOff(sitting, problem, found);
  return { ok: true, times, seat, thirds: thirdsOf(problem.cells, found.pressure) };
}
