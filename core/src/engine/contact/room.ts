import type { SurfaceSample } from "../surface.ts";
import { FRAME_SIZE } from "./frame.ts";

/** What one assembly gives; filled by `sums.ts`. */
export interface Sums {
  /** Residual: vertical force N, moment about the pitch axis, about the roll axis, N mm. */
  readonly g: Float64Array;
  /** Tangent -dg/dq by rows, 3 by 3. */
  readonly k: Float64Array;
  /** Sum of force (x, y, z) of contact and loads, N. */
  readonly force: Float64Array;
  /** Sum of force times arm about T, by rows (force) and columns (arm), N mm. */
  readonly moment: Float64Array;
  /** Of the contact alone: vertical force N, and its moments by x and by y about T, N mm. */
  readonly contact: Float64Array;
}

/** Arrays for one solve of up to `n` cells; may be used again for the next. */
export interface Room {
  readonly n: number;
  /** Where the surface was last read, and what it gave. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly sample: SurfaceSample;
  /** N/mm3 of each cell at first touch. */
  readonly stiffness: Float64Array;
  readonly frame: Float64Array;
  readonly sums: Sums;
}

export function roomFor(n: number): Room {
  const numbers = (size: number = n): Float64Array => new Float64Array(size);
  return {
    n,
    x: numbers(),
    y: numbers(),
    sample: { z: numbers(), zx: numbers(), zy: numbers(), zxx: numbers(), zxy: numbers(), zyy: numbers() },
    stiffness: numbers(),
    frame: numbers(FRAME_SIZE),
    sums: { g: numbers(3), k: numbers(9), force: numbers(3), moment: numbers(9), contact: numbers(3) },
  };
}
