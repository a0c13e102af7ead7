/*
 * Chance that can be repeated: each draw is a pure function of (seed, index, name), so no draw depends on
 * how many others were made, in which order, or by how many workers.
 * Published: Philox 4x32-10, J. K. Salmon, M. A. Moraes, R. O. Dror, D. E. Shaw, "Parallel random numbers:
 * as easy as 1, 2, 3", SC11 (2011). Key: the seed. Counter: index, hash of the name, length of the name.
 */
import { normalQuantile } from "./number/normal-quantile.ts";

/** Published with Philox: two multipliers, and what the key grows by each round. */
const MULTIPLIER_0 = 0xd2511f53;
const MULTIPLIER_1 = 0xcd9e8d57;
const KEY_STEP_0 = 0x9e3779b9;
const KEY_STEP_1 = 0xbb67ae85;
const ROUNDS = 10;

/** Published with FNV-1a, 32 bits (G. Fowler, L. C. Noll, K.-P. Vo, 1991). */
const FNV_START = 0x811c9dc5;
const FNV_PRIME = 0x01000193;

const TWO_TO_26 = 67108864;
const TWO_TO_32 = 4294967296;
const TWO_TO_MINUS_52 = 2.220446049250313e-16;

/** Upper 32 bits of the 64-bit product of two unsigned 32-bit numbers. */
function upperProduct(a: number, b: number): number {
  const aLow = a & 0xffff;
  const aHigh = a >>> 16;
  const bLow = b & 0xffff;
  const bHigh = b >>> 16;
  // Each partial product stays below 2^32, and each sum below 2^34: exact as plain numbers.
  const middle = aHigh * bLow + ((aLow * bLow) >>> 16);
  const carry = aLow * bHigh + (middle & 0xffff);
  return (aHigh * bHigh + Math.floor(middle / 65536) + Math.floor(carry / 65536)) | 0;
}

/** Mixes the four 32-bit words of the counter in place, under a key of two words. */
export function philox(counter: Int32Array, key0: number, key1: number): void {
  let a = counter[0]!;
  let b = counter[1]!;
  let c = counter[2]!;
  let d = counter[3]!;
  for (let round = 0; round < ROUNDS; round++) {
    const upper0 = upperProduct(MULTIPLIER_0, a);
    const upper1 = upperProduct(MULTIPLIER_1, c);
    const lower0 = Math.imul(MULTIPLIER_0, a);
    const lower1 = Math.imul(MULTIPLIER_1, c);
    a = upper1 ^ b ^ (key0 + Math.imul(round, KEY_STEP_0));
    b = lower1;
    c = upper0 ^ d ^ (key1 + Math.imul(round, KEY_STEP_1));
    d = lower0;
  }
  counter[0] = a;
  counter[1] = b;
  counter[2] = c;
  counter[3] = d;
}

/** 32-bit FNV-1a hash of a name of printable ASCII letters; from 0 to 2^32 - 1. */
export function hashName(name: string): number {
  let hash = FNV_START;
  for (let i = 0; i < name.length; i++) hash = Math.imul(hash ^ name.charCodeAt(i), FNV_PRIME);
  return hash >>> 0;
}

function checkWhole(what: string, value: number): void {
  if (Number.isSafeInteger(value) && value >= 0) return;
  throw new RangeError(`${what} must be a whole number from 0 to 2^53 - 1, read ${value}`);
}

const COUNTER = new Int32Array(4);

/**
 * A number of the open interval 0 to 1, on a grid of 2^-52 (never 0, never 1).
 * seed and index: whole numbers from 0 to 2^53 - 1 (RangeError otherwise); name: the variable's own name.
 */
export function drawUniform(seed: number, index: number, name: string): number {
  checkWhole("seed", seed);
  checkWhole("index", index);
  COUNTER[0] = index % TWO_TO_32;
  COUNTER[1] = Math.floor(index / TWO_TO_32);
  COUNTER[2] = hashName(name);
  COUNTER[3] = name.length;
  philox(COUNTER, (seed % TWO_TO_32) | 0, Math.floor(seed / TWO_TO_32));
  const upper = COUNTER[0]! >>> 6;
  const lower = COUNTER[1]! >>> 6;
  return (upper * TWO_TO_26 + lower + 0.5) * TWO_TO_MINUS_52;
}

/** A standard normal number: the quantile of drawUniform for the same three arguments, and so no other chance. */
export function drawNormal(seed: number, index: number, name: string): number {
  return normalQuantile(drawUniform(seed, index, name));
}
