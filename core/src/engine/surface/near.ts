import { combine } from "./grid.ts";
import type { SampleSurface, SurfaceSample } from "./sample-surface.ts";

/** A surface and what its modes add to it, with all slopes and second derivatives, at fixed places; mm. */
export interface NearFields {
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** z, zx, zy, zxx, zxy, zyy one after the other, each at all places. */
  readonly base: Float64Array;
  readonly modes: readonly Float64Array[];
}

const PARTS = ["z", "zx", "zy", "zxx", "zxy", "zyy"] as const satisfies readonly (keyof SurfaceSample)[];

/** Reads a surface and its modes once at the places that a body's cells lie over. */
export function nearFields(
  base: SampleSurface,
  modes: readonly SampleSurface[],
  x: Float64Array,
  y: Float64Array,
): NearFields {
  const packed = (surface: SampleSurface): Float64Array => {
    const all = new Float64Array(PARTS.length * x.length);
    surface(x.length, x, y, splitUp(all, x.length));
    return all;
  };
  return { x, y, base: packed(base), modes: modes.map(packed) };
}

/**
 * The surface base + sum of weights[m] modes[m] about those places, to second order in the way from each: no spline is
 * read again, a draw is one sum of scaled arrays. Good as long as cell i stays near place i: the error is the third
 * derivative times the cube of that way, over 6. One array serves all draws: a surface stands until the next is asked
 * for. RangeError where it is asked for another number of cells.
 */
export function nearSurface({
  x,
  y,
  base,
  modes,
}: NearFields): (weights: ArrayLike<number>) => SampleSurface {
  const all = new Float64Array(base.length);
  const at = splitUp(all, x.length);
  const surface: SampleSurface = (n, toX, toY, out) => {
    if (n !== x.length) throw new RangeError(`cells: ${n} where the surface is known at ${x.length}`);
    carry(n, x, y, at, toX, toY, out);
  };
  return (weights) => {
    combine(base, modes, weights, all);
    return surface;
  };
}

function splitUp(all: Float64Array, n: number): SurfaceSample {
  const part = (i: number): Float64Array => all.subarray(i * n, (i + 1) * n);
  return { z: part(0), zx: part(1), zy: part(2), zxx: part(3), zxy: part(4), zyy: part(5) };
}

/** Kernel. Value and slopes carried from where they are known to where they are asked for. */
function carry(
  n: number,
  x: Float64Array,
  y: Float64Array,
  at: SurfaceSample,
  toX: Float64Array,
  toY: Float64Array,
  out: SurfaceSample,
): void {
  for (let i = 0; i < n; i++) {
    const dx = toX[i]! - x[i]!;
    const dy = toY[i]! - y[i]!;
    const xx = at.zxx[i]!;
    const xy = at.zxy[i]!;
    const yy = at.zyy[i]!;
    const zx = at.zx[i]! + xx * dx + xy * dy;
    const zy = at.zy[i]! + xy * dx + yy * dy;
    out.z[i] = at.z[i]! + 0.5 * ((at.zx[i]! + zx) * dx + (at.zy[i]! + zy) * dy);
    out.zx[i] = zx;
    out.zy[i] = zy;
    out.zxx[i] = xx;
    out.zxy[i] = xy;
    out.zyy[i] = yy;
  }
}
