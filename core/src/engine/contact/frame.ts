import { cos, sin } from "../number/index.ts";
import type { ContactProblem } from "./problem.ts";

/**
 * A pose as a kernel reads it: 0 to 8 the rotation R by rows; 9 to 11 the turned pivot T; 12, 13 the pitch
 * axis (level, along `across`); 14 to 16 the roll axis, which pitches with the body; 17, 18 sine of the
 * pitch times the level roll direction.
 */
export const FRAME_SIZE = 19;

/** heave mm, pitch rad, roll rad, as the three unknowns stand in arrays. */
export type Unknowns = Float64Array;

/**
 * Fills `out` for X = R (P - C) + T, R = Ry(pitch) Rx(roll) about the axes that `across` gives, T = C +
 * (slide, heave). Kernel: no allocation.
 */
export function frameOf(problem: ContactProblem, q: Unknowns, out: Float64Array): void {
  const { across, pivot, slide } = problem;
  const cp = cos(q[1]!);
  const sp = sin(q[1]!);
  const cr = cos(q[2]!);
  const sr = sin(q[2]!);
  // Level axes: `a` along (roll, before pitch) and `b` across (pitch).
  const ax = across.y;
  const ay = -across.x;
  const bx = across.x;
  const by = across.y;
  const ab = sp * sr;
  out[0] = cp * ax * ax + ab * ax * bx + cr * bx * bx;
  out[1] = cp * ax * ay + ab * ax * by + cr * bx * by;
  out[2] = sp * cr * ax - sr * bx;
  out[3] = cp * ay * ax + ab * ay * bx + cr * by * bx;
  out[4] = cp * ay * ay + ab * ay * by + cr * by * by;
  out[5] = sp * cr * ay - sr * by;
  out[6] = -sp * ax + cp * sr * bx;
  out[7] = -sp * ay + cp * sr * by;
  out[8] = cp * cr;
  out[9] = pivot.x + slide.x;
  out[10] = pivot.y + slide.y;
  out[11] = pivot.z + q[0]!;
  out[12] = bx;
  out[13] = by;
  out[14] = cp * ax;
  out[15] = cp * ay;
  out[16] = -sp;
  out[17] = sp * ax;
  out[18] = sp * ay;
}
