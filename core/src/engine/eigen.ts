/*
 * Eigenvalues of a symmetric 3 x 3 by Jacobi's turns: slower than the closed form, but without its loss of
 * digits where two eigenvalues meet or the smallest is near zero. Error at most about 1e-15 of the largest.
 * Published: Golub and Van Loan, Matrix Computations, 4th ed. (2013), 8.5.
 */

/** Turns needed in practice: at most 8 sweeps; the bound only keeps a loop from being endless. */
const SWEEPS = 30;
const PLANES = [
  [0, 1, 2],
  [0, 2, 1],
  [1, 2, 0],
] as const;

/** Eigenvalues, smallest first, of nine entries row after row; only the upper triangle is read. NaN for what is not finite. */
export function symmetricEigen3(m: ArrayLike<number>): [number, number, number] {
  const upper = Float64Array.of(m[0]!, m[1]!, m[2]!, m[1]!, m[4]!, m[5]!, m[2]!, m[5]!, m[8]!);
  if (!upper.every((entry) => Number.isFinite(entry))) return [NaN, NaN, NaN];
  for (let sweep = 0; sweep < SWEEPS && isFull(upper); sweep++) {
    for (const [p, q, r] of PLANES) turn(upper, p, q, r);
  }
  const [low, middle, high] = Float64Array.of(upper[0]!, upper[4]!, upper[8]!).sort();
  return [low!, middle!, high!];
}

function isFull(m: Float64Array): boolean {
  return m[1] !== 0 || m[2] !== 0 || m[5] !== 0;
}

/** Turns the matrix in the plane of p and q so that its entry (p, q) becomes zero; r is the third axis. */
function turn(m: Float64Array, p: number, q: number, r: number): void {
  const off = m[3 * p + q]!;
  if (off === 0) return;
  const ratio = (m[4 * q]! - m[4 * p]!) / (2 * off);
  const t = (ratio < 0 ? -1 : 1) / (Math.abs(ratio) + Math.sqrt(ratio * ratio + 1));
  const c = 1 / Math.sqrt(t * t + 1);
  const s = t * c;
  m[4 * p]! -= t * off;
  m[4 * q]! += t * off;
  const [low, high] = [Math.min(p, r) * 3 + Math.max(p, r), Math.min(q, r) * 3 + Math.max(q, r)];
  const [atP, atQ] = [m[low]!, m[high]!];
  m[3 * p + q] = 0;
  m[low] = c * atP - s * atQ;
  m[high] = s * atP + c * atQ;
}
