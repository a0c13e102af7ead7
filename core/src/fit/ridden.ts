import { type Passed, poseAhead } from "../engine/contact/pose-ahead.ts";
import type { ContactProblem, Equilibrium, Load, Pose, Vector } from "../engine/contact/problem.ts";
import { type SettleOptions, settle } from "../engine/contact/settle.ts";
import { cos, sin } from "../engine/number/index.ts";
import { assumedLoad } from "./assumed-loads.ts";
import { loadPoint } from "./bars.ts";
import type { NoRest } from "./fit.ts";
import { onBarsIn, peakIn, type RiddenGait } from "./gaits.ts";
import { seatPoint } from "./load.ts";
import type { LoadsRead } from "./loads-read.ts";
import type { Sitting, SittingProblem } from "./problem.ts";

/** A gait at its peak: how the saddle lies then, or why it does not. */
export interface AtPeak {
  readonly ridden: RiddenGait;
  /** Force on the seat, in times the weight. */
  readonly times: number;
  readonly found: Equilibrium | NoRest;
}

/** Poses of a neighbouring setting or draw: at rest, and in each gait. */
export interface RiddenPoses {
  readonly rest: Pose;
  readonly gaits: readonly (Pose | undefined)[];
}

/** The next poses of a sweep: on the straight line through the last two, each by its place `at`. */
export function ridesAhead(
  passed: readonly { readonly at: number; readonly poses: RiddenPoses }[],
  at: number,
): RiddenPoses | undefined {
  const last = passed.at(-1);
  if (last === undefined) return undefined;
  const two = passed.slice(-2);
  const through = (of: (poses: RiddenPoses) => Pose | undefined) =>
    poseAhead(
      two.flatMap(({ at: place, poses }) => {
        const pose = of(poses);
        return pose === undefined ? [] : [{ at: place, pose }];
      }),
      at,
    );
  return {
    rest: through(({ rest }) => rest) ?? last.poses.rest,
    gaits: last.poses.gaits.map((_, i) => through(({ gaits }) => gaits[i])),
  };
}

/**
 * Each gait at its peak. The peak acts along the line through the load's point as the saddle lies at rest; the line stays
 * where it is while the saddle gives way under it (a peak is over before the rider follows). The girth pulls as at rest.
 */
export function atPeaks(
  sitting: Sitting,
  loads: LoadsRead,
  problem: SittingProblem,
  rest: Pose,
  near?: RiddenPoses,
  options: Omit<SettleOptions, "start"> = {},
): readonly AtPeak[] {
  const passed: Passed[] = [{ at: 1, pose: rest }];
  return loads.gaits.map((ridden, i) => {
    const times = peakIn(ridden, sitting.deviations);
    const part = onBarsIn(ridden, sitting.deviations);
    const start = besideNear(rest, near, i) ?? poseAhead(passed, times);
    const found = settle(atPeak(sitting, loads, problem, rest, times, part), { ...options, start });
    if (found.ok) passed.push({ at: times, pose: found.pose });
    return { ridden, times, found };
  });
}

/** The problem under so many times the weight, `part` of it on the stirrup bars, along its line as found at rest. */
export function atPeak(
  sitting: Sitting,
  loads: LoadsRead,
  problem: SittingProblem,
  rest: Pose,
  times: number,
  part: number,
): SittingProblem {
  const law = quickened(problem.law, times, assumedLoad("quickTimes", sitting.deviations));
  return { ...problem, law, load: peakLoad(sitting, loads, problem, rest, times, part) };
}

/**
 * Tissue gives slowly: under the weight as when standing, under what a beat adds so many times less. Secant of both parts:
 * times / (1 + (times - 1) / quick). At once the weight it is the standing law. Derived.
 */
function quickened(law: SittingProblem["law"], times: number, quick: number): SittingProblem["law"] {
  const stiffer = times / (1 + (times - 1) / quick);
  return { ...law, lowerModulus: law.lowerModulus.map((modulus) => modulus * stiffer) };
}

/** The weight so many times, along its line as found at rest, with this part of it on the stirrup bars. */
function peakLoad(
  { tree, deviations }: Sitting,
  { bars }: LoadsRead,
  problem: ContactProblem,
  rest: Pose,
  times: number,
  part: number,
): Load {
  const point = loadPoint(seatPoint(tree, deviations), bars.at(tree, deviations), part);
  const { weightN, pulls } = problem.load;
  return { weightN: weightN * times, at: carriedTo(rest, point, problem.pivot), turnsWithBody: false, pulls };
}

/** Where a point of the saddle lies at a pose, but for slide and heave. */
function carriedTo({ pitch, roll }: Pose, point: Vector, pivot: Vector): Vector {
  const [px, py, pz] = [point.x - pivot.x, point.y - pivot.y, point.z - pivot.z];
  const lifted = py * sin(roll) + pz * cos(roll);
  return {
    x: pivot.x + px * cos(pitch) + lifted * sin(pitch),
    y: pivot.y + py * cos(roll) - pz * sin(roll),
    z: pivot.z - px * sin(pitch) + lifted * cos(pitch),
  };
}

/** As far from rest as the neighbour lay. */
function besideNear(rest: Pose, near: RiddenPoses | undefined, i: number): Pose | undefined {
  const pose = near?.gaits[i];
  if (near === undefined || pose === undefined) return undefined;
  const on = (of: keyof Pose) => rest[of] + pose[of] - near.rest[of];
  return { heave: on("heave"), pitch: on("pitch"), roll: on("roll") };
}
