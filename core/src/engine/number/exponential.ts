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

const P1 = 1.66666666666666019037e-1;
const P2 = -2.77777777770155933842e-3;
const P3 = 6.61375632143793436117e-5;
const P4 = -1.6533902205465251539e-6;
const P5 = 4.13813679705723846039e-8;

const L1 = 6.66666666666673513e-1;
const L2 = 3.999999999940941908e-1;
const L3 = 2.857142874366239149e-1;
const L4 = 2.222219843214978396e-1;
const L5 = 1.818357216161805012e-1;
const L6 = 1.531383769920937332e-1;
const L7 = 1.479819860511658591e-1;

const LN2_HEAD = 6.9314718036912381649e-1;
const LN2_TAIL = 1.90821492927058770002e-10;
const ONE_OVER_LN2 = 1.442695040888963387;
const HALF_LN2 = 0.34657359027997264;
/** Beyond these e^x is Infinity, or zero. */
const LARGEST = 7.09782712893383973096e2;
const SMALLEST = -7.45133219101941108420e2;

const ROOT_TWO = 1.4142135623730951;
const SMALLEST_NORMAL = 2.2250738585072014e-308;
const TWO_TO_54 = 18014398509481984;

/** The part of e^x's rational form that both branches and `pow` share: x - t (P1 + ...), t = x x. */
export function expCore(x: number): number {
  const t = x * x;
  return x - t * (P1 + t * (P2 + t * (P3 + t * (P4 + t * P5))));
}

/** e to the x. */
export function exp(x: number): number {
  if (x !== x || x > LARGEST) return x + Infinity;
  if (x < SMALLEST) return 0;
  if (Math.abs(x) <= HALF_LN2) {
    const c = expCore(x);
    return 1 - ((x * c) / (c - 2) - x);
  }
  const k = Math.round(x * ONE_OVER_LN2);
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
  if (fraction > ROOT_TWO) {
    fraction *= 0.5;
    exponent += 1;
  }
  return logAbout(fraction - 1, exponent + k);
}
