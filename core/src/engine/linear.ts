/*
 * Small dense systems of linear equations; banded ones and eigenvalues beside it. Inputs are never changed.
 * Published: LU with partial pivoting, Golub and Van Loan, Matrix Computations, 4th ed. (2013), 3.4.
 */
export { solveBanded } from "./banded.ts";
export { symmetricEigen3 } from "./eigen.ts";

/** The distance from 1 to the next number: 2^-52. */
const ROUND_OFF = 2.220446049250313e-16;

/**
 * x with A x = b, for A of n x n, row after row. undefined where A is singular to round-off (a pivot of at
 * most n 2^-52 of its own column, so that unknowns in different units do no harm) or an entry is not finite.
 */
export function solve(a: Float64Array, b: Float64Array, n: number): Float64Array | undefined {
  const m = a.slice(0, n * n);
  const x = b.slice(0, n);
  for (let k = 0; k < n; k++) {
    const pivot = pivotRow(m, n, k);
    const size = Math.abs(m[pivot * n + k]!);
    if (!(size > n * ROUND_OFF * columnSize(a, n, k) && size < Infinity)) return undefined;
    if (pivot !== k) swapRows(m, x, n, k, pivot);
    for (let i = k + 1; i < n; i++) {
      const factor = m[i * n + k]! / m[k * n + k]!;
      for (let j = k + 1; j < n; j++) m[i * n + j]! -= factor * m[k * n + j]!;
      x[i]! -= factor * x[k]!;
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = x[i]!;
    for (let j = i + 1; j < n; j++) sum -= m[i * n + j]! * x[j]!;
    x[i] = sum / m[i * n + i]!;
  }
  return x.every((one) => Number.isFinite(one)) ? x : undefined;
}

/** Largest size in column k; NaN if one entry is NaN. */
function columnSize(a: Float64Array, n: number, k: number): number {
  let largest = 0;
  for (let i = 0; i < n; i++) largest = Math.max(largest, Math.abs(a[i * n + k]!));
  return largest;
}

function pivotRow(m: Float64Array, n: number, k: number): number {
  let row = k;
  for (let i = k + 1; i < n; i++) if (Math.abs(m[i * n + k]!) > Math.abs(m[row * n + k]!)) row = i;
  return row;
}

function swapRows(m: Float64Array, x: Float64Array, n: number, i: number, k: number): void {
  for (let j = 0; j < n; j++) [m[i * n + j], m[k * n + j]] = [m[k * n + j]!, m[i * n + j]!];
  [x[i], x[k]] = [x[k]!, x[i]!];
}
