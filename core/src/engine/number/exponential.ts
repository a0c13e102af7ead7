/*
 * Exponential and natural logarithm, for every argument. Within 1 ulp.
 * Published: fdlibm e_exp.c (Remez rational form on 0 to ln 2 / 2) and e_log.c.
 *
 * Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
 * Developed at SunPro, a Sun Microsystems, Inc. business.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this
 * notice is preserved.
 */

import { exponentOf, scaled, twoTo } from "./binary.ts";
import { LOG2_E, ROOT_2, SMALLEST_NORMAL, TWO_TO_54 } from "./constants.ts";

const P1 = 0.16666666666666602;
const P2 = -2.7777777777015593e-3;
const P3 = 6.613756321437934e-5;
const P4 = -1.6533902205465252e-6;
const P5 = 4.1381367970572385e-8;

const L1 = 0.6666666666666735;
const L2 = 0.3999999999940942;
const L3 = 0.2857142874366239;
const L4 = 0.22222198432149784;
const L5 = 0.1818357216161805;
const L6 = 0.15313837699209373;
const L7 = 0.14798198605116586;

const LN2_HEAD = 0.6931471803691238;
const LN2_TAIL = 1.9082149292705877e-10;
const HALF_LN2 = 0.34657359027997264;
/** Beyond these e^x is Infinity, or zero. */
const LARGEST = 709.782712893384;
const SMALLEST = -745.1332191019411;

/** The part of e^x's rational form that both branches and `pow` share: x - t (P1 + ...), t = x x. */
export function expCore(x: number): number {
  const t = x * x;
  return x - t * (P1 + t * (P2 + t * (P3 + t * (P4 + t * P5))));
}

/** e to the x. */
export function exp(x: number): number {
  if (!(x <= LARGEST)) return x > LARGEST ? Infinity : NaN;
  if (x < SMALLEST) return 0;
  if (Math.abs(x) <= HALF_LN2) {
    const c = expCore(x);
    return 1 - ((x * c) / (c - 2) - x);
  }
  const k = Math.round(x * LOG2_E);
  const from = x - k * LN2_HEAD;
  const less = k * LN2_TAIL;
  const rest = from - less;
  const c = expCore(rest);
  return scaled(1 - (less - (rest * c) / (2 - c) - from), k);
}

/** log(1 + f) + k ln 2, for f from sqrt(1/2) - 1 to sqrt(2) - 1. */
function logAbout(f: number, k: number): number {
  const half = 0.5 * f * f;
  const s = f / (2 + f);
  const z = s * s;
  const w = z * z;
  const even = w * (L2 + w * (L4 + w * L6));
  const odd = z * (L1 + w * (L3 + w * (L5 + w * L7)));
  return k * LN2_HEAD - (half - (s * (half + even + odd) + k * LN2_TAIL) - f);
}

/** Natural logarithm of x: -Infinity at zero, NaN below. */
export function log(x: number): number {
  if (!(x > 0) || x === Infinity) return x === 0 ? -Infinity : x > 0 ? x : NaN;
  if (x < SMALLEST_NORMAL) return logOfNormal(x * TWO_TO_54, -54);
  return logOfNormal(x, 0);
}

/** log(x) + k ln 2, for a normal x. */
function logOfNormal(x: number, k: number): number {
  let exponent = exponentOf(x);
  let fraction = x * twoTo(-exponent);
  if (fraction > ROOT_2) {
    fraction *= 0.5;
    exponent += 1;
  }
  return logAbout(fraction - 1, exponent + k);
}
