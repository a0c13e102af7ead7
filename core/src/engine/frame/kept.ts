import { AXES, ROWS, stiffnessOf } from "./element.ts";
import { type Frame, nodesOf, PER_NODE, type Vector } from "./model.ts";

/**
 * What an element keeps of an earlier yielding: at one place along it, its far part stands turned and shifted against
 * its near part when nothing loads it. An even curvature kept over the whole element is the same total turn half way.
 */
export interface Kept {
  readonly element: number;
  /** Place along the element, 0 at its start, 1 at its end. */
  readonly at: number;
  /** Turn of the far part, rad about x, y, z; and its shift, mm. */
  readonly turn: Vector;
  readonly shift: Vector;
}

/**
 * Loads that bring a frame into the state which kept turns leave in it: those that would hold each element straight,
 * let go. Displacements under them are true; section forces are those of the element less its kept part (`endForces`).
 */
export function loadsOf(frame: Frame, kept: readonly Kept[]): Float64Array {
  const loads = new Float64Array(PER_NODE * nodesOf(frame));
  const [axes, own, free] = [new Float64Array(AXES), new Float64Array(ROWS * ROWS), new Float64Array(ROWS)];
  for (const one of kept) {
    stiffnessOf(frame, one.element, axes, own);
    freeEnds(one, axes, free);
    const [start, end] = [frame.ends[2 * one.element]!, frame.ends[2 * one.element + 1]!];
    for (let i = 0; i < ROWS; i++) {
      let force = 0;
      for (let j = PER_NODE; j < ROWS; j++) force += own[i * ROWS + j]! * free[j]!;
      loads[i < PER_NODE ? PER_NODE * start + i : PER_NODE * end + i - PER_NODE]! += force;
    }
  }
  return loads;
}

/** Where the ends of the element stand by themselves, its start in its place. */
export function freeEnds({ at, turn, shift }: Kept, axes: Float64Array, out: Float64Array): void {
  const beyond = (1 - at) * axes[9]!;
  const [rx, ry, rz] = [beyond * axes[0]!, beyond * axes[1]!, beyond * axes[2]!];
  out.fill(0, 0, PER_NODE);
  out[6] = shift[0] + turn[1] * rz - turn[2] * ry;
  out[7] = shift[1] + turn[2] * rx - turn[0] * rz;
  out[8] = shift[2] + turn[0] * ry - turn[1] * rx;
  out[9] = turn[0];
  out[10] = turn[1];
  out[11] = turn[2];
}
