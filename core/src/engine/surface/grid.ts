import { fitLine } from "./spline.ts";

/** Where the values of a grid stand: x0 + i dx for i below nx, y0 + j dy for j below ny; mm. */
export interface Grid {
  readonly x0: number;
  readonly dx: number;
  readonly nx: number;
  readonly y0: number;
  readonly dy: number;
  readonly ny: number;
}

/** A smooth surface over a grid: (nx + 2) (ny + 2) coefficients of the bicubic B-spline, y fastest. */
export interface GridSpline extends Grid {
  readonly coefficients: Float64Array;
}

/**
 * Coefficients of the bicubic B-spline through `values` (nx ny of them, y fastest: values[i * ny + j]); nx
 * and ny at least 4. Not-a-knot ends. Linear in the values. RangeError for a wrong length or a value that is
 * no number.
 */
export function fitGrid(values: Float64Array, nx: number, ny: number): Float64Array {
  if (nx < 4 || ny < 4) throw new RangeError(`a grid needs at least 4 by 4 values, not ${nx} by ${ny}`);
  if (values.length !== nx * ny) throw new RangeError(`values: ${values.length} where ${nx * ny} are needed`);
  for (const value of values)
    if (!Number.isFinite(value)) throw new RangeError("values: one is not a number");
  const columns = ny + 2;
  const along = new Float64Array((nx + 2) * ny);
  const out = new Float64Array((nx + 2) * columns);
  const room = new Float64Array(2 * Math.max(nx, ny));
  for (let j = 0; j < ny; j++) fitLine(nx, values, j, ny, along, j, ny, room);
  for (let i = 0; i < nx + 2; i++) fitLine(ny, along, i * ny, 1, out, i * columns, 1, room);
  return out;
}

/**
 * base + sum of weights[m] modes[m], into `out`: a spline's coefficients are linear in its values, so a
 * surface of one draw is a sum of scaled coefficient arrays.
 */
export function combine(
  base: Float64Array,
  modes: readonly Float64Array[],
  weights: ArrayLike<number>,
  out: Float64Array,
): void {
  out.set(base);
  for (let m = 0; m < modes.length; m++) {
    const mode = modes[m];
    const weight = weights[m];
    if (!mode || weight === undefined || mode.length !== base.length) {
      throw new RangeError(`modes: number ${m} has no weight or another length than the base`);
    }
    if (weight !== 0) for (let i = 0; i < out.length; i++) out[i] = out[i]! + weight * mode[i]!;
  }
}
