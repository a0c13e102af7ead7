import { checkProblem } from "./check.ts";
import { type Descent, descend, type Goal } from "./descend.ts";
import { frameOf } from "./frame.ts";
import { readSurface, sunkHeave } from "./gap.ts";
import { firstStiffness } from "./law.ts";
import type { ContactProblem, Equilibrium, Pose, Refusal, RefusalReason } from "./problem.ts";
import { equilibriumOf } from "./result.ts";
import { type Room, roomFor } from "./room.ts";
import { type Scales, scalesOf } from "./scales.ts";

/** Residual at rest, as part of the load, and of load times length. */
export const AT_REST = 1e-9;
/** Below so many cells a rough answer on part of them saves nothing. */
const FEW_CELLS = 600;

/**
 * Rough answer on a part of the cells. Where half of all cells can be divided by the step, a mirrored pair of
 * blocks stays mirrored: symmetric problems keep their symmetry to the last digits.
 */
function roughStep(n: number): number {
  if (n <= FEW_CELLS) return 1;
  return [7, 5, 9, 11].find((candidate) => n % (2 * candidate) === 0) ?? 7;
}
/** Residual of a rough answer. */
const ROUGHLY = 3e-3;

export interface SettleOptions {
  /** A pose near the answer, from a neighbouring problem. */
  readonly start?: Pose | undefined;
  /** Arrays to use again; at least as many cells. */
  readonly room?: Room | undefined;
  /** Residual to stop at, where less than `AT_REST` will do. */
  readonly within?: number | undefined;
}

/**
 * Where a body with soft cells comes to rest on a surface: heave, pitch and roll at which forces and moments
 * balance to 1e-9 and stay balanced when nudged; or why there is no such pose.
 *
 * Units mm, N, MPa, rad. RangeError for a number that is none, by the field's name. Conventions and sources:
 * README of `engine`.
 */
export function settle(problem: ContactProblem, options: SettleOptions = {}): Equilibrium | Refusal {
  checkProblem(problem, options.start);
  const { cells } = problem;
  const room = options.room && options.room.n >= cells.n ? options.room : roomFor(cells.n);
  firstStiffness(problem.law, cells.n, room.stiffness);
  const scales = scalesOf(problem, room);
  const q = new Float64Array(3);
  const full: Goal = { step: 1, tolerance: options.within ?? AT_REST };
  if (options.start) {
    q.set([options.start.heave, options.start.pitch, options.start.roll]);
    const warm = descend(problem, room, scales, q, full);
    // Gone over from near by, it goes over from afar as well: in 9,900 of 9,900 draws of the examples.
    if (warm.tipped || (warm.settled && warm.smallest > 0)) return judged(problem, room, scales, q, warm);
  }
  sink(problem, room, scales, q);
  return judged(problem, room, scales, q, inTwoSteps(problem, room, scales, q, full));
}

/** Level, and as deep as springs that also pull would hold it: where a descent starts without a pose near by. */
function sink(problem: ContactProblem, room: Room, scales: Scales, q: Float64Array): void {
  const { cells, pivot, surface } = problem;
  const step = roughStep(cells.n);
  q.fill(0);
  frameOf(problem, q, room.frame);
  readSurface(cells, pivot, surface, room, step);
  q[0] = sunkHeave(cells, pivot, room, step, scales.load);
}

/** Down from `q`, which may be far: roughly on a part of the cells where that saves time, then on all of them. */
function inTwoSteps(
  problem: ContactProblem,
  room: Room,
  scales: Scales,
  q: Float64Array,
  full: Goal,
): Descent {
  const step = roughStep(problem.cells.n);
  if (step > 1) {
    const before = q.slice();
    const rough = descend(problem, room, scales, q, { step, tolerance: ROUGHLY });
    if (!(rough.settled && rough.smallest > 0)) q.set(before);
  }
  return descend(problem, room, scales, q, full);
}

function judged(
  problem: ContactProblem,
  room: Room,
  scales: Scales,
  q: Float64Array,
  descent: Descent,
): Equilibrium | Refusal {
  if (!descent.settled) return { ok: false, why: tipsWhere(q, room, scales.length) };
  if (!(descent.smallest > 0)) return { ok: false, why: "unstable" };
  const found = equilibriumOf(problem, room, q, descent);
  return found.compressionMax > problem.compressionLimit ? { ok: false, why: "beyond-law" } : found;
}

/** The way a body goes that found no rest: by the larger of its turns, or, hardly turned, of its moments. */
function tipsWhere(q: Float64Array, { sums: { g } }: Room, length: number): RefusalReason {
  const turned = Math.max(Math.abs(q[1]!), Math.abs(q[2]!)) > 0.1;
  const pitch = turned ? q[1]! : g[1]! / length;
  const roll = turned ? q[2]! : g[2]! / length;
  if (Math.abs(pitch) >= Math.abs(roll)) return pitch > 0 ? "tips-rear" : "tips-front";
  return roll > 0 ? "tips-near" : "tips-off";
}
