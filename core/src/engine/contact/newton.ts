import { symmetricEigen3 } from "../linear.ts";
import type { Sums } from "./room.ts";

/**
 * Kernel: the tangent with angles counted as `length` times the angle (mm), so that all nine terms are N/mm;
 * into `out`.
 */
export function inOneUnit({ k }: Sums, length: number, out: Float64Array): void {
  const per = 1 / length;
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) out[3 * i + j] = k[3 * i + j]! * (i > 0 ? per : 1) * (j > 0 ? per : 1);
  }
}

/** Smallest eigenvalue of the symmetric part of the 3 by 3 matrix `a`; `room` holds 9 numbers. */
export function smallestEigenvalue(a: Float64Array, room: Float64Array): number {
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) room[3 * i + j] = 0.5 * (a[3 * i + j]! + a[3 * j + i]!);
  }
  return symmetricEigen3(room)[0]!;
}

/**
 * Kernel: the step (heave mm, angles as `length` times the angle) that (a + shift I) step = g asks for, no
 * part longer than `longest`; into `out`. Cramer's rule: a 3 by 3 system needs no more.
 */
export function stepOf(
  a: Float64Array,
  shift: number,
  { g }: Sums,
  length: number,
  longest: number,
  out: Float64Array,
): void {
  const a0 = a[0]! + shift;
  const a4 = a[4]! + shift;
  const a8 = a[8]! + shift;
  const g0 = g[0]!;
  const g1 = g[1]! / length;
  const g2 = g[2]! / length;
  const c0 = a4 * a8 - a[5]! * a[7]!;
  const c1 = a[5]! * a[6]! - a[3]! * a8;
  const c2 = a[3]! * a[7]! - a4 * a[6]!;
  const det = a0 * c0 + a[1]! * c1 + a[2]! * c2;
  const s0 = (c0 * g0 + (a[2]! * a[7]! - a[1]! * a8) * g1 + (a[1]! * a[5]! - a[2]! * a4) * g2) / det;
  const s1 = (c1 * g0 + (a0 * a8 - a[2]! * a[6]!) * g1 + (a[2]! * a[3]! - a0 * a[5]!) * g2) / det;
  const s2 = (c2 * g0 + (a[1]! * a[6]! - a0 * a[7]!) * g1 + (a0 * a4 - a[1]! * a[3]!) * g2) / det;
  const size = Math.max(Math.abs(s0), Math.abs(s1), Math.abs(s2));
  const part = size > longest ? longest / size : 1;
  out[0] = s0 * part;
  out[1] = (s1 * part) / length;
  out[2] = (s2 * part) / length;
}
