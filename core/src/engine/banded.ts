/*
 * Symmetric positive definite systems whose entries lie near the diagonal, as smoothing splines make them.
 * Published: band Cholesky, Golub and Van Loan, Matrix Computations, 4th ed. (2013), 4.3.5.
 */

/** The distance from 1 to the next number: 2^-52. */
const ROUND_OFF = 2.220446049250313e-16;

/**
 * x with A x = b, for a symmetric A of n x n that is zero further than `width` from its diagonal.
 * `band` holds the diagonal and what lies left of it: band[i (width + 1) + d] = A[i][i - d], d from 0 to
 * width; places left of the matrix are not read. undefined where A is not positive definite to round-off.
 * Time grows with n width^2. Inputs are not changed.
 */
export function solveBanded(
  band: Float64Array,
  b: Float64Array,
  n: number,
  width: number,
): Float64Array | undefined {
  const factor = cholesky(band, n, width);
  if (factor === undefined) return undefined;
  const row = width + 1;
  const x = b.slice(0, n);
  for (let i = 0; i < n; i++) {
    for (let d = Math.min(width, i); d > 0; d--) x[i]! -= factor[i * row + d]! * x[i - d]!;
    x[i]! /= factor[i * row]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let d = Math.min(width, n - 1 - i); d > 0; d--) x[i]! -= factor[(i + d) * row + d]! * x[i + d]!;
    x[i]! /= factor[i * row]!;
  }
  return x;
}

/** L with L L' = A, stored as A is. */
function cholesky(band: Float64Array, n: number, width: number): Float64Array | undefined {
  const row = width + 1;
  const l = band.slice(0, n * row);
  for (let i = 0; i < n; i++) {
    for (let d = Math.min(width, i); d >= 0; d--) {
      const j = i - d;
      let sum = l[i * row + d]!;
      for (let k = Math.max(0, i - width); k < j; k++) sum -= l[i * row + i - k]! * l[j * row + j - k]!;
      if (d > 0) l[i * row + d] = sum / l[j * row]!;
      else if (!(sum > ROUND_OFF * band[i * row]! && sum < Infinity)) return undefined;
      else l[i * row] = Math.sqrt(sum);
    }
  }
  return l;
}
