import type { GridSpline } from "./grid.ts";
import type { SampleSurface } from "./sample-surface.ts";

/**
 * The surface of a spline: value, slopes and second derivatives exactly of the spline; beyond the grid it
 * goes on straight (second derivative across the edge zero, slopes without a jump). RangeError where cells
 * or coefficients do not make a grid.
 */
export function gridSurface(spline: GridSpline): SampleSurface {
  const { dx, dy, nx, ny, coefficients } = spline;
  if (coefficients.length !== (nx + 2) * (ny + 2))
    throw new RangeError("coefficients: not (nx + 2) (ny + 2)");
  if (!(dx > 0) || !(dy > 0)) throw new RangeError("dx, dy: not above zero");
  return (n, x, y, out) => sample(spline, n, x, y, out);
}

/**
 * Kernel. The four cubic B-splines about a point at t of its cell (s = 1 - t): value s3, 4 - 6 t2 + 3 t3, ..,
 * t3 over 6; slope -s2, t (3 t - 4), .., t2 over 2; second derivative s, 3 t - 2, 1 - 3 t, t. Each set sums
 * to 6, 0, 0. Sixteen coefficients a point, no allocation.
 */
function sample(
  g: GridSpline,
  n: number,
  xs: Float64Array,
  ys: Float64Array,
  out: Parameters<SampleSurface>[3],
): void {
  const { x0, y0, nx, ny, coefficients: c } = g;
  const { z, zx, zy, zxx, zxy, zyy } = out;
  const px = 1 / g.dx;
  const py = 1 / g.dy;
  const columns = ny + 2;
  for (let p = 0; p < n; p++) {
    const u = (xs[p]! - x0) * px;
    const v = (ys[p]! - y0) * py;
    const ui = u > 0 ? Math.min(u, nx - 1) : 0;
    const vi = v > 0 ? Math.min(v, ny - 1) : 0;
    const i = Math.min(Math.floor(ui), nx - 2);
    const j = Math.min(Math.floor(vi), ny - 2);
    const t = ui - i;
    const s = 1 - t;
    const r = vi - j;
    const q = 1 - r;
    const a0 = s * s * s;
    const a3 = t * t * t;
    const a1 = 4 - 6 * t * t + 3 * a3;
    const a2 = 6 - a0 - a1 - a3;
    const d0 = -s * s;
    const d3 = t * t;
    const d1 = t * (3 * t - 4);
    const d2 = -d0 - d1 - d3;
    const f1 = 3 * t - 2;
    const f2 = 1 - 3 * t;
    const b0 = q * q * q;
    const b3 = r * r * r;
    const b1 = 4 - 6 * r * r + 3 * b3;
    const b2 = 6 - b0 - b1 - b3;
    const e0 = -q * q;
    const e3 = r * r;
    const e1 = r * (3 * r - 4);
    const e2 = -e0 - e1 - e3;
    const h1 = 3 * r - 2;
    const h2 = 1 - 3 * r;
    // Rows along y: value V, slope S, second derivative T of each of four.
    let at = i * columns + j;
    const c0 = c[at]!,
      c1 = c[at + 1]!,
      c2 = c[at + 2]!,
      c3 = c[at + 3]!;
    const V0 = b0 * c0 + b1 * c1 + b2 * c2 + b3 * c3;
    const S0 = e0 * c0 + e1 * c1 + e2 * c2 + e3 * c3;
    const T0 = q * c0 + h1 * c1 + h2 * c2 + r * c3;
    at += columns;
    const k0 = c[at]!,
      k1 = c[at + 1]!,
      k2 = c[at + 2]!,
      k3 = c[at + 3]!;
    const V1 = b0 * k0 + b1 * k1 + b2 * k2 + b3 * k3;
    const S1 = e0 * k0 + e1 * k1 + e2 * k2 + e3 * k3;
    const T1 = q * k0 + h1 * k1 + h2 * k2 + r * k3;
    at += columns;
    const m0 = c[at]!,
      m1 = c[at + 1]!,
      m2 = c[at + 2]!,
      m3 = c[at + 3]!;
    const V2 = b0 * m0 + b1 * m1 + b2 * m2 + b3 * m3;
    const S2 = e0 * m0 + e1 * m1 + e2 * m2 + e3 * m3;
    const T2 = q * m0 + h1 * m1 + h2 * m2 + r * m3;
    at += columns;
    const n0 = c[at]!,
      n1 = c[at + 1]!,
      n2 = c[at + 2]!,
      n3 = c[at + 3]!;
    const V3 = b0 * n0 + b1 * n1 + b2 * n2 + b3 * n3;
    const S3 = e0 * n0 + e1 * n1 + e2 * n2 + e3 * n3;
    const T3 = q * n0 + h1 * n1 + h2 * n2 + r * n3;
    z[p] = (a0 * V0 + a1 * V1 + a2 * V2 + a3 * V3) / 36;
    zx[p] = (d0 * V0 + d1 * V1 + d2 * V2 + d3 * V3) * (px / 12);
    zxx[p] = (s * V0 + f1 * V1 + f2 * V2 + t * V3) * ((px * px) / 6);
    zy[p] = (a0 * S0 + a1 * S1 + a2 * S2 + a3 * S3) * (py / 12);
    zxy[p] = (d0 * S0 + d1 * S1 + d2 * S2 + d3 * S3) * ((px * py) / 4);
    zyy[p] = (a0 * T0 + a1 * T1 + a2 * T2 + a3 * T3) * ((py * py) / 6);
    if (u !== ui || v !== vi) {
      const xyy = (d0 * T0 + d1 * T1 + d2 * T2 + d3 * T3) * ((px * py * py) / 2);
      const xxy = (s * S0 + f1 * S1 + f2 * S2 + t * S3) * ((px * px * py) / 2);
      goOnStraight(out, p, (u - ui) / px, (v - vi) / py, xxy, xyy);
    }
  }
}

/** Carries point p from the edge of the grid to where it stands, `ex` and `ey` beyond. */
function goOnStraight(
  { z, zx, zy, zxx, zxy, zyy }: Parameters<SampleSurface>[3],
  p: number,
  ex: number,
  ey: number,
  xxy: number,
  xyy: number,
): void {
  z[p] = z[p]! + zx[p]! * ex + zy[p]! * ey + zxy[p]! * ex * ey;
  zx[p] = zx[p]! + zxy[p]! * ey;
  zy[p] = zy[p]! + zxy[p]! * ex;
  zxx[p] = ex === 0 ? zxx[p]! + xxy * ey : 0;
  zyy[p] = ey === 0 ? zyy[p]! + xyy * ex : 0;
}
