import { frameOf } from "./frame.ts";
import { readSurface } from "./gap.ts";
import { assemble } from "./loads.ts";
import { inOneUnit, smallestEigenvalue, stepOf } from "./newton.ts";
import type { ContactProblem } from "./problem.ts";
import type { Room } from "./room.ts";
import type { Scales } from "./scales.ts";

/** Largest part of one step, mm (angles times the length). */
const LONGEST_STEP = 20;
/** How far a cell may move sideways before the surface is read again, mm. */
const FRESH_WITHIN = 4;
/** Angle beyond which a body has tipped, rad (assumption: 0.3 to 0.8; nothing that is meant to lie on a surface rests so). */
const TIPPED = 0.35;
const MOST_STEPS = 80;
/** Residual from which one more step is likely the last, so that the surface itself is read after it. */
const NEAR = 3e-5;

/** How near a descent goes. */
export interface Goal {
  /** Only every so many cells are taken, each for as many. */
  readonly step: number;
  /** Residual at which a pose is at rest. */
  readonly tolerance: number;
}

export interface Descent {
  readonly settled: boolean;
  /** Turned so far that it has gone over: no rest lies where it came from. */
  readonly tipped: boolean;
  readonly residual: number;
  readonly smallest: number;
  readonly steps: number;
}

/**
 * Goes from the pose `q` to rest; leaves the pose in `q` and the exact sums at it in `room`. Full Newton on
 * the surface's second-order expansion; the surface is read again before a pose is believed. Where the tangent is not positive definite it is shifted until it is: the step then goes down
 * the way that a slow body would, so that a tipping body tips instead of being caught at a pose on which
 * nothing can stand. A step after which the residual is larger is halved, three times at most.
 */
export function descend(
  problem: ContactProblem,
  room: Room,
  scales: Scales,
  q: Float64Array,
  { step, tolerance }: Goal,
): Descent {
  const { length, stiffness } = scales;
  const tangent = new Float64Array(9);
  const spare = new Float64Array(9);
  const move = new Float64Array(3);
  const readAt = new Float64Array(3);
  let residual = Infinity;
  const read = (): number => {
    frameOf(problem, q, room.frame);
    readSurface(problem.cells, problem.pivot, problem.surface, room, step);
    readAt.set(q);
    assemble(problem, room, step);
    return residualOf(room, scales);
  };
  const tryOut = (): number => {
    if (residual < NEAR || sideways(q, readAt) * scales.reach > FRESH_WITHIN) return read();
    frameOf(problem, q, room.frame);
    assemble(problem, room, step);
    return residualOf(room, scales);
  };
  const eigen = (): number => {
    inOneUnit(room.sums, length, tangent);
    return smallestEigenvalue(tangent, spare);
  };
  residual = read();
  if (!(residual < Infinity)) throw new RangeError("surface: gives no numbers under the cells");
  let steps = 0;
  for (; steps < MOST_STEPS && !isTipped(q); steps++) {
    if (residual <= tolerance) {
      if (readAt[0] !== q[0] || readAt[1] !== q[1] || readAt[2] !== q[2]) residual = read();
      if (residual <= tolerance) return { settled: true, tipped: false, residual, smallest: eigen(), steps };
    }
    const smallest = eigen();
    const shift = smallest > 1e-6 * stiffness ? 0 : 0.02 * stiffness - smallest;
    stepOf(tangent, shift, room.sums, length, LONGEST_STEP, move);
    residual = take(q, move, residual, tryOut);
    if (!(residual < Infinity)) throw new RangeError("surface: gives no numbers where the cells went");
  }
  return { settled: false, tipped: isTipped(q), residual, smallest: eigen(), steps };
}

const isTipped = (q: Float64Array): boolean => Math.abs(q[1]!) >= TIPPED || Math.abs(q[2]!) >= TIPPED;

/** Moves by `move`, or half of it, a quarter, an eighth, until the residual is not larger than before. */
function take(q: Float64Array, move: Float64Array, before: number, tryOut: () => number): number {
  for (let i = 0; i < 3; i++) q[i] = q[i]! + move[i]!;
  let part = 1;
  let now = tryOut();
  while (!(now <= before) && part > 0.125) {
    part /= 2;
    for (let i = 0; i < 3; i++) q[i] = q[i]! - part * move[i]!;
    now = tryOut();
  }
  return now;
}

/** Turn since the surface was read, rad. */
function sideways(q: Float64Array, readAt: Float64Array): number {
  return Math.abs(q[1]! - readAt[1]!) + Math.abs(q[2]! - readAt[2]!);
}

/** Largest of the three residuals by load, and load times length. */
function residualOf({ sums: { g } }: Room, { load, length }: Scales): number {
  const moment = Math.max(Math.abs(g[1]!), Math.abs(g[2]!)) / length;
  const largest = Math.max(Math.abs(g[0]!), moment) / load;
  return Number.isNaN(largest) ? Infinity : largest;
}
