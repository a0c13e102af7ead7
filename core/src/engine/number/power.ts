/*
 * Power, for every argument, special values as in ECMAScript (1 to the Infinity is NaN). Within 1 ulp.
 * Published: fdlibm e_pow.c: log2|x| in two parts (about 75 bits), times y, then 2 to that.
 *
 * Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this
 * notice is preserved.
 */

import { exponentOf, leadingBits, scaled, twoTo } from "./binary.ts";
import { LN2, SMALLEST_NORMAL, TWO_TO_54 } from "./constants.ts";
import { expCore } from "./exponential.ts";

const L1 = 0.5999999999999946;
const L2 = 0.4285714285785502;
const L3 = 0.33333332981837743;
const L4 = 0.272728123808534;
const L5 = 0.23066074577556175;
const L6 = 0.20697501780033842;

/** 2 / (3 ln 2) and ln 2, each whole and in two parts; log2(1.5) in two parts. */
const CP = 0.9617966939259756;
const CP_HEAD = 0.9617967009544373;
const CP_TAIL = -7.028461650952758e-9;
const LN2_HEAD = 0.6931471824645996;
const LN2_TAIL = -1.904654299957768e-9;
const LOG2_1_5_HEAD = 0.5849624872207642;
const LOG2_1_5_TAIL = 1.350039202129749e-8;

const ROOT_1_5 = 1.224744871391589;
const ROOT_3 = 1.7320508075688772;
/** Any x but 1 to a power of this size is Infinity or zero. */
const HUGE_POWER = 18446744073709552000;
/** 2 to more than this is Infinity, 2 to less than its negative is zero. */
const LARGEST_BINARY_POWER = 1080;

const LOG = new Float64Array(2);

/** log2 of f near a base (1 or 1.5) whose own logarithm is baseHead + baseTail; plus n. Into LOG. */
function logInTwoParts(f: number, base: number, baseHead: number, baseTail: number, n: number): void {
  const u = f - base;
  const v = 1 / (f + base);
  const s = u * v;
  const sHead = leadingBits(s);
  const sumHead = leadingBits(f + base);
  const sTail = v * (u - sHead * sumHead - sHead * (f - (sumHead - base)));
  const z = s * s;
  const r = z * z * (L1 + z * (L2 + z * (L3 + z * (L4 + z * (L5 + z * L6))))) + sTail * (sHead + s);
  const square = sHead * sHead;
  const tHead = leadingBits(3 + square + r);
  const tTail = r - (tHead - 3 - square);
  const a = sHead * tHead;
  const b = sTail * tHead + tTail * s;
  const pHead = leadingBits(a + b);
  const pTail = b - (pHead - a);
  const zHead = CP_HEAD * pHead;
  const zTail = CP_TAIL * pHead + pTail * CP + baseTail;
  const first = leadingBits(zHead + zTail + baseHead + n);
  LOG[0] = first;
  LOG[1] = zTail - (first - n - baseHead - zHead);
}

function logOfSize(size: number): void {
  const small = size < SMALLEST_NORMAL;
  const x = small ? size * TWO_TO_54 : size;
  const exponent = exponentOf(x);
  const f = x * twoTo(-exponent);
  const n = small ? exponent - 54 : exponent;
  if (f < ROOT_1_5) logInTwoParts(f, 1, 0, 0, n);
  else if (f < ROOT_3) logInTwoParts(f, 1.5, LOG2_1_5_HEAD, LOG2_1_5_TAIL, n);
  else logInTwoParts(0.5 * f, 1, 0, 0, n + 1);
}

/** 2 to the power first + second. */
function twoToTheSum(first: number, second: number): number {
  const sum = first + second;
  if (sum > LARGEST_BINARY_POWER) return Infinity;
  if (sum < -LARGEST_BINARY_POWER) return 0;
  const n = Math.round(sum);
  const left = first - n;
  const t = leadingBits(left + second);
  const u = t * LN2_HEAD;
  const v = (second - (t - left)) * LN2 + t * LN2_TAIL;
  const z = u + v;
  const w = v - (z - u);
  const c = expCore(z);
  return scaled(1 - ((z * c) / (c - 2) - (w + z * w) - z), n);
}

/** size to the power y for a finite size > 0 other than 1 and a finite y. */
function ofSize(size: number, y: number): number {
  if (Math.abs(y) >= HUGE_POWER) return size > 1 === y > 0 ? Infinity : 0;
  logOfSize(size);
  const yHead = leadingBits(y);
  return twoToTheSum(yHead * LOG[0]!, (y - yHead) * LOG[0]! + y * LOG[1]!);
}

function isOdd(y: number): boolean {
  return Math.floor(y) === y && Math.floor(y / 2) * 2 !== y;
}

/** x to the power y. */
export function pow(x: number, y: number): number {
  if (y === 0) return 1;
  if (Number.isNaN(x) || Number.isNaN(y)) return NaN;
  const size = Math.abs(x);
  if (Math.abs(y) === Infinity) return size === 1 ? NaN : size > 1 === y > 0 ? Infinity : 0;
  const negative = (x < 0 || Object.is(x, -0)) && isOdd(y);
  if (size === 0 || size === Infinity) {
    const end = (size === 0) === y > 0 ? 0 : Infinity;
    return negative ? -end : end;
  }
  if (x < 0 && Math.floor(y) !== y) return NaN;
  const value = size === 1 ? 1 : ofSize(size, y);
  return negative ? -value : value;
}
