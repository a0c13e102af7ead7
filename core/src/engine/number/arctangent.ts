/*
 * Arc tangent of a number and of a point, radians, for every argument. atan within 1 ulp, atan2 within 2.
 * Published: fdlibm s_atan.c and e_atan2.c (minimax polynomial on 0 to 7/16 about four known angles).
 *
 * Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
 * Developed at SunPro, a Sun Microsystems, Inc. business.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this
 * notice is preserved.
 */
import { HALF_PI, HALF_PI_TAIL, PI, PI_TAIL } from "./constants.ts";

const A0 = 0.3333333333333293;
const A1 = -0.19999999999876483;
const A2 = 0.14285714272503466;
const A3 = -0.11111110405462356;
const A4 = 9.090887133436507e-2;
const A5 = -7.69187620504483e-2;
const A6 = 6.661073137387531e-2;
const A7 = -5.8335701337905735e-2;
const A8 = 4.9768779946159324e-2;
const A9 = -3.6531572744216916e-2;
const A10 = 1.6285820115365782e-2;

/** angle + angleTail, plus the arc tangent of x (|x| <= 7/16). */
function beyond(angle: number, angleTail: number, x: number): number {
  const z = x * x;
  const w = z * z;
  const odd = z * (A0 + w * (A2 + w * (A4 + w * (A6 + w * (A8 + w * A10)))));
  const even = w * (A1 + w * (A3 + w * (A5 + w * (A7 + w * A9))));
  return angle - (x * (odd + even) - angleTail - x);
}

/** Arc tangent of x >= 0. */
function ofSize(x: number): number {
  if (x < 0.4375) return beyond(0, 0, x);
  if (x < 0.6875) return beyond(0.4636476090008061, 2.2698777452961687e-17, (2 * x - 1) / (2 + x));
  if (x < 1.1875) return beyond(0.7853981633974483, 3.061616997868383e-17, (x - 1) / (x + 1));
  if (x < 2.4375) return beyond(0.982793723247329, 1.3903311031230998e-17, (x - 1.5) / (1 + 1.5 * x));
  return beyond(HALF_PI, HALF_PI_TAIL, -1 / x);
}

/** Arc tangent of x, from -pi/2 to pi/2. */
export function atan(x: number): number {
  if (x < 0) return -ofSize(-x);
  return x === 0 ? x : ofSize(x);
}

/** Arc tangent where one of the two is zero, infinite or not a number, as ECMAScript defines Math.atan2. */
function onAnAxis(y: number, x: number): number {
  if (Number.isNaN(x) || Number.isNaN(y)) return NaN;
  const behind = x < 0 || Object.is(x, -0);
  const below = y < 0 || Object.is(y, -0);
  let size: number;
  if (y === 0) size = behind ? PI : 0;
  else if (Math.abs(x) === Infinity && Math.abs(y) === Infinity) size = behind ? 2.356194490192345 : PI / 4;
  else if (Math.abs(x) === Infinity) size = behind ? PI : 0;
  else size = HALF_PI;
  return below ? -size : size;
}

/** Angle of the point (x, y) from the x axis, from -pi to pi; signed zeros as in ECMAScript. */
export function atan2(y: number, x: number): number {
  if (x === 0 || y === 0 || !(Math.abs(x) < Infinity) || !(Math.abs(y) < Infinity)) return onAnAxis(y, x);
  const angle = ofSize(Math.abs(y / x));
  const size = x > 0 ? angle : PI - (angle - PI_TAIL);
  return y < 0 ? -size : size;
}
