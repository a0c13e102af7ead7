/*
 * Arc sine and arc cosine, radians, for |x| <= 1, NaN beyond. Within 1 ulp.
 * Published: fdlibm e_asin.c and e_acos.c (one rational function on 0 to 0.5; the rest by half angles).
 *
 * Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
 * Developed at SunPro, a Sun Microsystems, Inc. business.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this
 * notice is preserved.
 */

import { leadingBits } from "./binary.ts";
import { HALF_PI, HALF_PI_TAIL, PI, QUARTER_PI } from "./constants.ts";

const P0 = 0.16666666666666666;
const P1 = -0.3255658186224009;
const P2 = 0.20121253213486293;
const P3 = -4.005553450067941e-2;
const P4 = 7.915349942898145e-4;
const P5 = 3.479331075960212e-5;
const Q1 = -2.403394911734414;
const Q2 = 2.0209457602335057;
const Q3 = -0.6882839716054533;
const Q4 = 7.703815055590194e-2;

/** Above this the plain half-angle form is already good. */
const NEAR_ONE = 0.975;

/** (asin(x) - x) / x as a function of t = x x, for t up to 0.25. */
function excess(t: number): number {
  const p = t * (P0 + t * (P1 + t * (P2 + t * (P3 + t * (P4 + t * P5)))));
  return p / (1 + t * (Q1 + t * (Q2 + t * (Q3 + t * Q4))));
}

/** asin(x) for x from 0.5 to 1: pi/2 - 2 asin(sqrt((1 - x) / 2)). */
function steepArcsine(x: number): number {
  const t = 0.5 * (1 - x);
  const root = Math.sqrt(t);
  const r = excess(t);
  if (x >= NEAR_ONE) return HALF_PI - (2 * (root + root * r) - HALF_PI_TAIL);
  const rootHead = leadingBits(root);
  const rootTail = (t - rootHead * rootHead) / (root + rootHead);
  const p = 2 * root * r - (HALF_PI_TAIL - 2 * rootTail);
  return QUARTER_PI - (p - (QUARTER_PI - 2 * rootHead));
}

/** Arc sine of x, from -pi/2 to pi/2. */
export function asin(x: number): number {
  const size = Math.abs(x);
  if (size < 0.5) return x + x * excess(x * x);
  if (!(size <= 1)) return NaN;
  return x < 0 ? -steepArcsine(size) : steepArcsine(size);
}

/** Arc cosine of x, from 0 to pi. */
export function acos(x: number): number {
  if (!(Math.abs(x) <= 1)) return NaN;
  if (Math.abs(x) < 0.5) return HALF_PI - (x - (HALF_PI_TAIL - x * excess(x * x)));
  if (x === 1) return 0;
  const t = 0.5 * (1 - Math.abs(x));
  const root = Math.sqrt(t);
  const r = excess(t);
  if (x < 0) return PI - 2 * (root + (r * root - HALF_PI_TAIL));
  const rootHead = leadingBits(root);
  const rootTail = (t - rootHead * rootHead) / (root + rootHead);
  return 2 * (rootHead + (r * root + rootTail));
}
