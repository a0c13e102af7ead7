/*
 * Exact operations on the binary form of a number. Everything in this folder stands on these and on
 * + - * / and Math.sqrt, whose results IEEE 754 fixes to the last bit in every JavaScript engine.
 */

const SMALLEST_EXPONENT = -1074;
const LARGEST_EXPONENT = 1023;
const POWERS = new Float64Array(LARGEST_EXPONENT - SMALLEST_EXPONENT + 1);
for (let i = 0, power = Number.MIN_VALUE; i < POWERS.length; i++, power *= 2) POWERS[i] = power;

const VIEW = new DataView(new ArrayBuffer(8));
const BIAS = 1023;

/** 2 to the k, exact, for k from -1074 to 1023. */
export function twoTo(k: number): number {
  return POWERS[k - SMALLEST_EXPONENT]!;
}

/** y times 2 to the k, rounded once, for y in [0.5, 2) and k from -2000 to 2000. */
export function scaled(y: number, k: number): number {
  // In two halves: the first product cannot leave the normal range, so only the second can round.
  const half = k >> 1;
  return y * twoTo(half) * twoTo(k - half);
}

/** The k with 2^k <= x < 2^(k+1), for a normal x > 0 (2^-1022 and more, not Infinity). */
export function exponentOf(x: number): number {
  VIEW.setFloat64(0, x);
  return (VIEW.getInt32(0) >> 20) - BIAS;
}

const SPLITTER = 134217729;

/**
 * The upper 26 bits of x, so that the product of two such is exact (Veltkamp 1968, Dekker 1971).
 * For |x| below 2^996.
 */
export function leadingBits(x: number): number {
  const spread = SPLITTER * x;
  return spread - (spread - x);
}
