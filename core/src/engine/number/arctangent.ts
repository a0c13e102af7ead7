/*
 * Arc tangent of a number and of a point, radians, for every argument. atan within 1 ulp, atan2 within 2.
 * Published: fdlibm s_atan.c and e_atan2.c (minimax polynomial on 0 to 7/16 about four known angles).
 *
 * Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
 * Developed at SunPro, a Sun Microsystems, Inc. business.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this
 * notice is preserved.
 */

const A0 = 3.33333333333329318027e-1;
const A1 = -1.99999999998764832476e-1;
const A2 = 1.42857142725034663711e-1;
const A3 = -1.1111110405462355788e-1;
const A4 = 9.09088713343650656196e-2;
const A5 = -7.69187620504482999495e-2;
const A6 = 6.66107313738753120669e-2;
const A7 = -5.83357013379057348645e-2;
const A8 = 4.97687799461593236017e-2;
const A9 = -3.6531572744216915527e-2;
const A10 = 1.62858201153657823623e-2;

const PI = 3.141592653589793;
const PI_TAIL = 1.2246467991473532e-16;
const HALF_PI = 1.5707963267948966;
const HALF_PI_TAIL = 6.123233995736766e-17;
/** Below this atan(x) is x to the last bit. */
const TINY = 7.450580596923828e-9;

/** Angle head + tail, plus the arc tangent of x (|x| <= 7/16). */
function beyond(angle: number, angleTail: number, x: number): number {
  const z = x * x;
  const w = z * z;
  const odd = z * (A0 + w * (A2 + w * (A4 + w * (A6 + w * (A8 + w * A10)))));
  const even = w * (A1 + w * (A3 + w * (A5 + w * (A7 + w * A9))));
  return angle - (x * (odd + even) - angleTail - x);
}

/** Arc tangent of x >= 0. */
function ofSize(x: number): number {
  if (x < 0.4375) return x < TINY ? x : beyond(0, 0, x);
  if (x < 0.6875) return beyond(4.63647609000806093515e-1, 2.26987774529616870924e-17, (2 * x - 1) / (2 + x));
  if (x < 1.1875) return beyond(7.85398163397448278999e-1, 3.06161699786838301793e-17, (x - 1) / (x + 1));
  if (x < 2.4375)
    return beyond(9.82793723247329054082e-1, 1.39033110312309984516e-17, (x - 1.5) / (1 + 1.5 * x));
  return beyond(HALF_PI, HALF_PI_TAIL, -1 / x);
}

/** Arc tangent of x, from -pi/2 to pi/2. */
export function atan(x: number): number {
  if (x < 0) return -ofSize(-x);
  return x === 0 ? x : ofSize(x);
}

/** Arc tangent where one of the two is zero, infinite or not a number, as ECMAScript defines Math.atan2. */
function onAnAxis(y: number, x: number): number {
  if (x !== x || y !== y) return NaN;
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
