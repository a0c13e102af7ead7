/*
 * Argument reduction of Cody and Waite (1980), with the three-part half pi and the cancellation test of
 * fdlibm's e_rem_pio2.c. The parts are the leading 33 bits of pi/2, of what is left, and of what is left
 * after that (derived: printed by evidence/number/make-table.py --parts).
 *
 * Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
 * Developed at SunPro, a Sun Microsystems, Inc. business.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this
 * notice is preserved.
 */

/** Angles beyond this many radians are refused (NaN): n times 33 bits would no longer be exact. */
export const ANGLE_LIMIT = 1.6e6;

const TWO_OVER_PI = 0.6366197723675814;
const PART_1 = 1.5707963267341256;
const AFTER_1 = 6.077100506506192e-11;
const PART_2 = 6.077100506303966e-11;
const AFTER_2 = 2.0222662487959506e-21;
const PART_3 = 2.0222662487111665e-21;
const AFTER_3 = 8.4784276603689e-32;

/** Leading bits that may cancel before the next part of half pi is needed: 16, then 49. */
const CANCELS_16 = 65536;
const CANCELS_49 = 562949953421312;

/**
 * x less the nearest whole number of quarter turns, as rest[0] + rest[1]; returns that number modulo 4.
 * For |x| <= ANGLE_LIMIT. The rest is exact to 2^-85 of x, or better near a multiple of half pi.
 */
export function quarterTurns(x: number, rest: Float64Array): number {
  const n = Math.round(x * TWO_OVER_PI);
  let from = x - n * PART_1;
  let less = n * AFTER_1;
  let first = from - less;
  if (Math.abs(first) * CANCELS_16 < Math.abs(x)) {
    const before = from;
    from = before - n * PART_2;
    less = n * AFTER_2 - (before - from - n * PART_2);
    first = from - less;
    if (Math.abs(first) * CANCELS_49 < Math.abs(x)) {
      const earlier = from;
      from = earlier - n * PART_3;
      less = n * AFTER_3 - (earlier - from - n * PART_3);
      first = from - less;
    }
  }
  rest[0] = first;
  rest[1] = from - first - less;
  return n & 3;
}
