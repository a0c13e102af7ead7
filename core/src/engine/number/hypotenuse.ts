/*
 * Length of a vector of two components, for every argument. Within 2 ulp: two products, one sum and one
 * root, each rounded once; scaled by a power of two (exact) where a square would leave the range.
 */

/** Squares of sizes between these two neither overflow nor lose bits. */
const SMALL = 2.5e-147;
const LARGE = 6.703903964971298e153;
const TWO_TO_600 = 4.149515568880993e180;
const TWO_TO_MINUS_600 = 2.409919865102884e-181;

/** Square root of a a + b b; Infinity if either is infinite, even beside NaN. */
export function hypot(a: number, b: number): number {
  const p = Math.abs(a);
  const q = Math.abs(b);
  if (p === Infinity || q === Infinity) return Infinity;
  const long = Math.max(p, q);
  if (long > LARGE) return inScale(p, q, TWO_TO_MINUS_600, TWO_TO_600);
  if (long < SMALL) return inScale(p, q, TWO_TO_600, TWO_TO_MINUS_600);
  return Math.sqrt(p * p + q * q);
}

function inScale(p: number, q: number, by: number, back: number): number {
  const a = p * by;
  const b = q * by;
  return Math.sqrt(a * a + b * b) * back;
}
