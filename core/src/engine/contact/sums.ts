import { isStraight, seriesPressure, seriesStiffness } from "./law.ts";
import type { ContactProblem } from "./problem.ts";
import type { Room } from "./room.ts";

/**
 * Slope across below which friction sets in steadily instead of all at once (assumption 0.01 to 0.05): on
 * level ground its direction has no meaning, and a jump there would leave no answer to converge to.
 */
export const FRICTION_SETS_IN = 0.02;

/**
 * Kernel: residual g, tangent -dg/dq, forces and moments about T of the contact, at the pose in
 * `room.frame`, from the surface as last read (value to second order about the points read, so exact where
 * the pose is the one it was read at). Of every `step` cells the middle one is taken, its area times `step`.
 *
 * Force on a cell: p A (n + mu t). g = sum of F . dX/dq, dX/dq = (ez, a1 x r, a2 x r), r = X - T. The tangent
 * has three parts: pressure and its direction change with the surface and the pose (G = dF/dX), and the arms
 * turn (d2X/dq2, from the moments, in `loads.ts`). No allocation.
 */
export function sumContact(problem: ContactProblem, room: Room, step: number): void {
  const { cells, law, pivot, friction: mu } = problem;
  const { frame: f, sums, sample, stiffness, x: readX, y: readY } = room;
  const { x, y, z, area } = cells;
  const { z: b0, zx, zy, zxx, zxy, zyy } = sample;
  const straight = isStraight(law);
  const cx = problem.across.x;
  const cy = problem.across.y;
  const r00 = f[0]!,
    r01 = f[1]!,
    r02 = f[2]!,
    r10 = f[3]!,
    r11 = f[4]!,
    r12 = f[5]!;
  const r20 = f[6]!,
    r21 = f[7]!,
    r22 = f[8]!,
    tx = f[9]!,
    ty = f[10]!,
    tz = f[11]!;
  const px = f[12]!,
    py = f[13]!,
    rx = f[14]!,
    ry = f[15]!,
    rz = f[16]!;
  let fx = 0,
    fy = 0,
    fz = 0;
  let mxx = 0,
    mxy = 0,
    mxz = 0,
    myx = 0,
    myy = 0,
    myz = 0,
    mzx = 0,
    mzy = 0,
    mzz = 0;
  let k00 = 0,
    k01 = 0,
    k02 = 0,
    k10 = 0,
    k11 = 0,
    k12 = 0,
    k20 = 0,
    k21 = 0,
    k22 = 0;
  for (let i = step >> 1, c = 0; i < cells.n; i += step, c++) {
    const qx = x[i]! - pivot.x;
    const qy = y[i]! - pivot.y;
    const qz = z[i]! - pivot.z;
    const ax = r00 * qx + r01 * qy + r02 * qz;
    const ay = r10 * qx + r11 * qy + r12 * qz;
    const az = r20 * qx + r21 * qy + r22 * qz;
    // The surface below the moved cell, and the depth along its normal.
    const dx = ax + tx - readX[c]!;
    const dy = ay + ty - readY[c]!;
    const bxx = zxx[c]!;
    const bxy = zxy[c]!;
    const byy = zyy[c]!;
    const bx = zx[c]! + bxx * dx + bxy * dy;
    const by = zy[c]! + bxy * dx + byy * dy;
    const depth = b0[c]! + 0.5 * ((zx[c]! + bx) * dx + (zy[c]! + by) * dy) - az - tz;
    if (depth <= 0) continue;
    const nz = 1 / Math.sqrt(1 + bx * bx + by * by);
    const d = depth * nz;
    let p: number;
    let k: number;
    if (straight) {
      k = stiffness[i]!;
      p = k * d;
    } else if (law.kind === "series") {
      p = seriesPressure(law, i, d);
      k = seriesStiffness(law, i, p);
    } else continue;
    const a = area[i]! * step;
    // e = n + mu t; t = q (cx, cy, s), q = mu sign(s) / sqrt(1 + s2), eased in below FRICTION_SETS_IN.
    const s = bx * cx + by * cy;
    let q = 0;
    let dq = 0;
    if (mu !== 0) {
      const level = 1 / Math.sqrt(1 + s * s);
      const u = s / FRICTION_SETS_IN;
      const inside = u > -1 && u < 1;
      const sign = inside ? 0.5 * u * (3 - u * u) : u > 0 ? 1 : -1;
      q = mu * sign * level;
      dq = -q * s * level * level + (inside ? (mu * 1.5 * (1 - u * u) * level) / FRICTION_SETS_IN : 0);
    }
    const ex = -bx * nz + q * cx;
    const ey = -by * nz + q * cy;
    const ez = nz + q * s;
    const pa = p * a;
    const Fx = pa * ex;
    const Fy = pa * ey;
    const Fz = pa * ez;
    fx += Fx;
    fy += Fy;
    fz += Fz;
    mxx += Fx * ax;
    mxy += Fx * ay;
    mxz += Fx * az;
    myx += Fy * ax;
    myy += Fy * ay;
    myz += Fy * az;
    mzx += Fz * ax;
    mzy += Fz * ay;
    mzz += Fz * az;
    // G = dF/dX, columns x, y, z.
    const ka = k * a;
    const n2 = nz * nz;
    const gxn = -nz * n2 * (bx * bxx + by * bxy);
    const gyn = -nz * n2 * (bx * bxy + by * byy);
    const gxs = cx * bxx + cy * bxy;
    const gys = cx * bxy + cy * byy;
    const gxd = ka * (bx * nz + depth * gxn);
    const gyd = ka * (by * nz + depth * gyn);
    const gzd = -ka * nz;
    const gxx = gxd * ex + pa * (-bxx * nz - bx * gxn + dq * gxs * cx);
    const gyx = gxd * ey + pa * (-bxy * nz - by * gxn + dq * gxs * cy);
    const gzx = gxd * ez + pa * (gxn + gxs * (dq * s + q));
    const gxy = gyd * ex + pa * (-bxy * nz - bx * gyn + dq * gys * cx);
    const gyy = gyd * ey + pa * (-byy * nz - by * gyn + dq * gys * cy);
    const gzy = gyd * ez + pa * (gyn + gys * (dq * s + q));
    const gxz = gzd * ex;
    const gyz = gzd * ey;
    const gzz = gzd * ez;
    // Arms: v1 = a1 x r (a1 level), v2 = a2 x r.
    const v1x = py * az;
    const v1y = -px * az;
    const v1z = px * ay - py * ax;
    const v2x = ry * az - rz * ay;
    const v2y = rz * ax - rx * az;
    const v2z = rx * ay - ry * ax;
    const w1x = gxx * v1x + gxy * v1y + gxz * v1z;
    const w1y = gyx * v1x + gyy * v1y + gyz * v1z;
    const w1z = gzx * v1x + gzy * v1y + gzz * v1z;
    const w2x = gxx * v2x + gxy * v2y + gxz * v2z;
    const w2y = gyx * v2x + gyy * v2y + gyz * v2z;
    const w2z = gzx * v2x + gzy * v2y + gzz * v2z;
    k00 -= gzz;
    k01 -= w1z;
    k02 -= w2z;
    k10 -= v1x * gxz + v1y * gyz + v1z * gzz;
    k11 -= v1x * w1x + v1y * w1y + v1z * w1z;
    k12 -= v1x * w2x + v1y * w2y + v1z * w2z;
    k20 -= v2x * gxz + v2y * gyz + v2z * gzz;
    k21 -= v2x * w1x + v2y * w1y + v2z * w1z;
    k22 -= v2x * w2x + v2y * w2y + v2z * w2z;
  }
  const { force, moment, k: tangent } = sums;
  put3(force, 0, fx, fy, fz);
  put3(moment, 0, mxx, mxy, mxz);
  put3(moment, 3, myx, myy, myz);
  put3(moment, 6, mzx, mzy, mzz);
  put3(tangent, 0, k00, k01, k02);
  put3(tangent, 3, k10, k11, k12);
  put3(tangent, 6, k20, k21, k22);
}

function put3(out: Float64Array, at: number, a: number, b: number, c: number): void {
  out[at] = a;
  out[at + 1] = b;
  out[at + 2] = c;
}
