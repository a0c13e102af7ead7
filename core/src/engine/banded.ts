/*
 * Symmetric positive definite systems whose entries lie near the diagonal, as smoothing splines and chains of beams
 * make them. Published: band Cholesky, Golub and Van Loan, Matrix Computations, 4th ed. (2013), 4.3.5.
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
  const factor = band.slice(0, n * (width + 1));
  if (factorBanded(factor, n, width, ROUND_OFF) !== undefined) return undefined;
  const x = b.slice(0, n);
  substituteBanded(factor, x, n, width);
  return x;
}

/**
 * L with L L' = A in the place of A, stored as A is; for many right hand sides. A pivot counts where it is more than
 * `least` times its own diagonal entry. Back comes the row of the first one that is not: the unknown that those before
 * it leave free; undefined where all are well.
 */
export function factorBanded(l: Float64Array, n: number, width: number, least: number): number | undefined {
  const row = width + 1;
  for (let i = 0; i < n; i++) {
    const diagonal = l[i * row]!;
    for (let d = Math.min(width, i); d >= 0; d--) {
      const j = i - d;
      let sum = l[i * row + d]!;
      for (let k = Math.max(0, i - width); k < j; k++) sum -= l[i * row + i - k]! * l[j * row + j - k]!;
      if (d > 0) l[i * row + d] = sum / l[j * row]!;
      else if (!(sum > least * diagonal && sum < Infinity)) return i;
      else l[i * row] = Math.sqrt(sum);
    }
  }
  return undefined;
}

/** x with L L' x = b, in the place of b. */
export function substituteBanded(l: Float64Array, x: Float64Array, n: number, width: number): void {
  const row = width + 1;
  for (let i = 0; i < n; i++) {
    for (let d = Math.min(width, i); d > 0; d--) x[i]! -= l[i * row + d]! * x[i - d]!;
    x[i]! /= l[i * row]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let d = Math.min(width, n - 1 - i); d > 0; d--) x[i]! -= l[(i + d) * row + d]! * x[i + d]!;
    x[i]! /= l[i * row]!;
  }
}
