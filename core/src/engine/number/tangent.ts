/*
 * Tangent, radians, for |x| <= ANGLE_LIMIT (1.6e6), NaN beyond. Within 1 ulp.
 * Published: fdlibm k_tan.c (minimax polynomial on -0.67434 to 0.67434).
 *
 * Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
 * Developed at SunPro, a Sun Microsystems, Inc. business.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this
 * notice is preserved.
 */

import { leadingBits } from "./binary.ts";
import { QUARTER_PI, QUARTER_PI_TAIL } from "./constants.ts";
import { ANGLE_LIMIT, quarterTurns } from "./quarter-turns.ts";

const T0 = 0.3333333333333341;
const T1 = 0.13333333333320124;
const T2 = 5.396825397622605e-2;
const T3 = 2.1869488294859542e-2;
const T4 = 8.8632398235993e-3;
const T5 = 3.5920791075913124e-3;
const T6 = 1.4562094543252903e-3;
const T7 = 5.880412408202641e-4;
const T8 = 2.464631348184699e-4;
const T9 = 7.817944429395571e-5;
const T10 = 7.140724913826082e-5;
const T11 = -1.8558637485527546e-5;
const T12 = 2.590730518636337e-5;

/** Above this the tangent is taken from its distance to pi/4. */
const STEEP = 0.67434;
/** Below this the tangent of x is x to the last bit (and keeps its signed zero). */
const TINY = 7.450580596923828e-9;
const REST = new Float64Array(2);

/** tan(x + tail) - x, for |x| <= 0.67434. */
function overX(x: number, tail: number): number {
  const z = x * x;
  const w = z * z;
  const odd = T1 + w * (T3 + w * (T5 + w * (T7 + w * (T9 + w * T11))));
  const even = z * (T2 + w * (T4 + w * (T6 + w * (T8 + w * (T10 + w * T12)))));
  const cube = z * x;
  return tail + z * (cube * (odd + even) + tail) + T0 * cube;
}

/** -1 / (x + over), rounded about once. */
function minusReciprocal(x: number, over: number): number {
  const w = x + over;
  const wHead = leadingBits(w);
  const wTail = over - (wHead - x);
  const a = -1 / w;
  const aHead = leadingBits(a);
  return aHead + a * (1 + aHead * wHead + aHead * wTail);
}

/** Tangent of x + tail (|x| <= pi/4), or a quarter turn further: its negative reciprocal. */
function tangentAfter(odd: boolean, x: number, tail: number): number {
  if (Math.abs(x) < STEEP) {
    const over = overX(x, tail);
    return odd ? minusReciprocal(x, over) : x + over;
  }
  const side = x < 0 ? -1 : 1;
  const short = QUARTER_PI - side * x + (QUARTER_PI_TAIL - side * tail);
  const over = overX(short, 0);
  const w = short + over;
  const v = odd ? -1 : 1;
  return side * (v - 2 * (short - ((w * w) / (w + v) - over)));
}

/** Tangent of x radians. */
export function tan(x: number): number {
  const size = Math.abs(x);
  if (size <= QUARTER_PI) return size < TINY ? x : tangentAfter(false, x, 0);
  if (!(size <= ANGLE_LIMIT)) return NaN;
  const turns = quarterTurns(x, REST);
  return tangentAfter((turns & 1) === 1, REST[0]!, REST[1]!);
}
