/*
 * The standard normal value below which a given share lies. Relative error about 1e-16 by its author;
 * checked here to 1e-15.
 * Published: M. J. Wichura, Algorithm AS 241 (PPND16), Applied Statistics 37 (1988) 477-484.
 */
import { log } from "./exponential.ts";

/** Coefficients of numerator and denominator, highest power first; the last of each denominator is 1. */
const CENTRE_TOP = [
  2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946,
  1971.5909503065513, 133.14166789178438, 3.3871328727963665,
];
const CENTRE_BOTTOM = [
  5226.495278852854, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751,
  687.1870074920579, 42.31333070160091, 1,
];
const SIDE_TOP = [
  7.745450142783414e-4, 2.2723844989269184e-2, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
  5.769497221460691, 4.630337846156546, 1.4234371107496835,
];
const SIDE_BOTTOM = [
  1.0507500716444169e-9, 5.475938084995345e-4, 1.5198666563616457e-2, 0.14810397642748008, 0.6897673349851,
  1.6763848301838038, 2.053191626637759, 1,
];
const TAIL_TOP = [
  2.0103343992922881e-7, 2.7115555687434876e-5, 1.2426609473880784e-3, 2.6532189526576124e-2,
  0.29656057182850487, 1.7848265399172913, 5.463784911164114, 6.657904643501103,
];
const TAIL_BOTTOM = [
  2.0442631033899397e-15, 1.421511758316446e-7, 1.8463183175100548e-5, 7.868691311456133e-4,
  1.4875361290850615e-2, 0.1369298809227358, 0.599832206555888, 1,
];

/** Where the three rational forms meet. */
const CENTRE_HALF_WIDTH = 0.425;
const CENTRE_SHIFT = 0.180625;
const SIDE_END = 5;
const SIDE_SHIFT = 1.6;

function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (const coefficient of coefficients) sum = sum * x + coefficient;
  return sum;
}

function ratio(top: readonly number[], bottom: readonly number[], x: number): number {
  return polynomial(top, x) / polynomial(bottom, x);
}

/** Standard normal quantile of p; -Infinity at 0, Infinity at 1, NaN outside. */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) return p === 0 ? -Infinity : p === 1 ? Infinity : NaN;
  const q = p - 0.5;
  if (Math.abs(q) <= CENTRE_HALF_WIDTH) return q * ratio(CENTRE_TOP, CENTRE_BOTTOM, CENTRE_SHIFT - q * q);
  const r = Math.sqrt(-log(q < 0 ? p : 1 - p));
  const size =
    r <= SIDE_END ? ratio(SIDE_TOP, SIDE_BOTTOM, r - SIDE_SHIFT) : ratio(TAIL_TOP, TAIL_BOTTOM, r - SIDE_END);
  return q < 0 ? -size : size;
}
