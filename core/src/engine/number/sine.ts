/*
 * Sine and cosine, radians, for |x| <= ANGLE_LIMIT (1.6e6), NaN beyond. Within 1 ulp.
 * Published: fdlibm k_sin.c and k_cos.c (minimax polynomials on -pi/4 to pi/4).
 *
 * Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
 * Developed at SunPro, a Sun Microsystems, Inc. business.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this
 * notice is preserved.
 */
import { QUARTER_PI } from "./constants.ts";
import { ANGLE_LIMIT, quarterTurns } from "./quarter-turns.ts";

const S1 = -0.16666666666666632;
const S2 = 8.33333333332249e-3;
const S3 = -1.984126982985795e-4;
const S4 = 2.7557313707070068e-6;
const S5 = -2.5050760253406863e-8;
const S6 = 1.58969099521155e-10;

const C1 = 4.16666666666666e-2;
const C2 = -1.388888888887411e-3;
const C3 = 2.480158728947673e-5;
const C4 = -2.7557314351390663e-7;
const C5 = 2.087572321298175e-9;
const C6 = -1.1359647557788195e-11;

const REST = new Float64Array(2);

/** Sine of x + tail, for |x| <= pi/4 and a tail below half an ulp of x. */
function nearSine(x: number, tail: number): number {
  const z = x * x;
  const w = z * z;
  const r = S2 + z * (S3 + z * S4) + z * w * (S5 + z * S6);
  const v = z * x;
  return x - (z * (0.5 * tail - v * r) - tail - v * S1);
}

/** Cosine of x + tail, for |x| <= pi/4 and a tail below half an ulp of x. */
function nearCosine(x: number, tail: number): number {
  const z = x * x;
  const w = z * z;
  const r = z * (C1 + z * (C2 + z * C3)) + w * w * (C4 + z * (C5 + z * C6));
  const half = 0.5 * z;
  const one = 1 - half;
  return one + (1 - one - half + (z * r - x * tail));
}

/** Sine of x plus a number of quarter turns. */
function sineAfter(turns: number, x: number, tail: number): number {
  const size = (turns & 1) === 0 ? nearSine(x, tail) : nearCosine(x, tail);
  return (turns & 2) === 0 ? size : -size;
}

/** Sine of x radians. */
export function sin(x: number): number {
  const size = Math.abs(x);
  if (size <= QUARTER_PI) return nearSine(x, 0);
  if (!(size <= ANGLE_LIMIT)) return NaN;
  const turns = quarterTurns(x, REST);
  return sineAfter(turns, REST[0]!, REST[1]!);
}

/** Cosine of x radians. */
export function cos(x: number): number {
  const size = Math.abs(x);
  if (size <= QUARTER_PI) return nearCosine(x, 0);
  if (!(size <= ANGLE_LIMIT)) return NaN;
  const turns = quarterTurns(x, REST);
  return sineAfter(turns + 1, REST[0]!, REST[1]!);
}
