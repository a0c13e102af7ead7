import type { SampleSurface } from "@treewright/core/engine/surface.ts";

/** A polynomial in xi = x / L: value and two derivatives by x. Coefficients from low order up. */
export function polynomial(
  coefficients: readonly number[],
  length: number,
): (x: number) => [number, number, number] {
  return (x) => {
    const xi = x / length;
    let value = 0;
    let first = 0;
    let second = 0;
    for (const c of [...coefficients].reverse()) {
      second = second * xi + 2 * first;
      first = first * xi + value;
      value = value * xi + c;
    }
    return [value, first / length, second / (length * length)];
  };
}

export interface BackInputs {
  readonly L: number;
  readonly H: number;
  readonly xd: number;
  readonly tilt: number;
  readonly s: readonly number[];
  readonly c: readonly number[];
  readonly k: readonly number[];
}

/**
 * The back of the model cases in closed form, with exact derivatives: B = z0 - s (sqrt(y2 + c2) - c) - k y2 / 2,
 * z0 = -H (1 - ((x - xd) / xd)2) - tilt x.
 */
export function analyticBack(back: BackInputs): SampleSurface {
  const fall = polynomial(back.s, back.L);
  const crown = polynomial(back.c, back.L);
  const bend = polynomial(back.k, back.L);
  return (n, xs, ys, out) => {
    for (let i = 0; i < n; i++) {
      const x = xs[i] ?? Number.NaN;
      const y = ys[i] ?? Number.NaN;
      const [s, s1, s2] = fall(x);
      const [c, c1, c2] = crown(x);
      const [k, k1, k2] = bend(x);
      const u = (x - back.xd) / back.xd;
      const q = Math.sqrt(y * y + c * c);
      const low = c / q - 1;
      const half = 0.5 * y * y;
      out.z[i] = -back.H * (1 - u * u) - back.tilt * x - s * (q - c) - k * half;
      out.zx[i] = (2 * back.H * u) / back.xd - back.tilt - s1 * (q - c) - s * c1 * low - k1 * half;
      out.zy[i] = (-s * y) / q - k * y;
      out.zxx[i] =
        (2 * back.H) / (back.xd * back.xd) -
        s2 * (q - c) -
        2 * s1 * c1 * low -
        s * c2 * low -
        s * c1 * c1 * (1 / q - (c * c) / (q * q * q)) -
        k2 * half;
      out.zxy[i] = (-s1 * y) / q + (s * y * c * c1) / (q * q * q) - k1 * y;
      out.zyy[i] = (-s * c * c) / (q * q * q) - k;
    }
  };
}
