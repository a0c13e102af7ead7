import fc from "fast-check";
import { EigenvalueDecomposition, Matrix, solve as theirSolve } from "ml-matrix";
import { describe, expect, test } from "vitest";
import { solve, solveBanded, symmetricEigen3 } from "../../core/src/engine/linear.ts";
import { propertySeed } from "./seed.ts";

/* Beside ml-matrix, and by the laws A x = b, trace and determinant. */

const seed = propertySeed("linear laws");
const RUNS = { seed, numRuns: 500 };
/** Eighths from -100 to 100: no entry is so small that a product of two leaves the range. */
const entry = fc.integer({ min: -800, max: 800 }).map((eighths) => eighths / 8);
const square = fc.integer({ min: 1, max: 8 }).chain((n) =>
  fc.record({
    n: fc.constant(n),
    a: fc.array(entry, { minLength: n * n, maxLength: n * n }),
    b: fc.array(entry, { minLength: n, maxLength: n }),
  }),
);

function rows(a: readonly number[], n: number): number[][] {
  return Array.from({ length: n }, (_, i) => a.slice(i * n, i * n + n));
}

/** Largest entry of A x - b beside the size of what was added up: a backward error. */
function backwardError(a: readonly number[], x: Float64Array, b: readonly number[]): number {
  const errors = b.map((right, i) => {
    const terms = Array.from(x, (value, j) => (a[i * b.length + j] ?? 0) * value);
    const size = terms.reduce((sum, term) => sum + Math.abs(term), Math.abs(right));
    return Math.abs(terms.reduce((sum, term) => sum + term, -right)) / (size || 1);
  });
  return Math.max(...errors);
}

/** Singular values beyond 1 to 1,000, from A'A. */
function isNearSingular(a: readonly number[], n: number): boolean {
  const m = new Matrix(rows(a, n));
  const squares = new EigenvalueDecomposition(m.transpose().mmul(m)).realEigenvalues;
  return !(Math.min(...squares) >= 1e-6 * Math.max(...squares)) || Math.max(...squares) === 0;
}

describe("solve", () => {
  test("solves, or says singular; agrees with ml-matrix; leaves its inputs alone", () => {
    const law = ({ n, a, b }: { n: number; a: number[]; b: number[] }): void => {
      const [matrix, right] = [Float64Array.from(a), Float64Array.from(b)];
      const x = solve(matrix, right, n);
      expect([...matrix, ...right]).toEqual([...a, ...b]);
      if (isNearSingular(a, n)) return;
      if (x === undefined) throw new Error("a sound system was refused");
      expect(backwardError(a, x, b)).toBeLessThan(1e-10);
      const theirs = theirSolve(new Matrix(rows(a, n)), Matrix.columnVector(b)).to1DArray();
      const size = Math.max(...theirs.map(Math.abs), 1e-300);
      for (const [i, value] of theirs.entries())
        expect(Math.abs((x[i] ?? 0) - value) / size).toBeLessThan(1e-9);
    };
    fc.assert(
      fc.property(square, (one) => {
        law(one);
      }),
      RUNS,
    );
  });
  test("singular, no number, and unknowns in very different units", () => {
    const found = (a: number[], b: number[]) => solve(Float64Array.from(a), Float64Array.from(b), b.length);
    expect(found([1, 2, 2, 4], [1, 1])).toBeUndefined();
    expect(found([0.1, 0.3, 0.3, 0.9], [1, 1])).toBeUndefined();
    expect(found([1, Number.NaN, 0, 1], [1, 1])).toBeUndefined();
    expect(found([1, 0, 0, Infinity], [1, 1])).toBeUndefined();
    expect(found([1, 0, 0, 1], [1, Number.NaN])).toBeUndefined();
    expect(found([0, 0, 0, 0], [0, 0])).toBeUndefined();
    expect(found([0, 1, 1, 0], [2, 3])).toEqual(Float64Array.of(3, 2));
    expect(found([1e-20, 0, 0, 1e20], [1e-20, 1e20])).toEqual(Float64Array.of(1, 1));
  });
});

describe("symmetricEigen3", () => {
  const six = fc.array(entry, { minLength: 6, maxLength: 6 });
  const full = ([a = 0, b = 0, c = 0, d = 0, e = 0, f = 0]: readonly number[]) => [a, b, c, b, d, e, c, e, f];
  test("agrees with ml-matrix, and keeps trace and the sum of squares", () => {
    const law = (upper: number[]): void => {
      const m = full(upper);
      const found = symmetricEigen3(m);
      const size = Math.max(...m.map(Math.abs), 1e-300);
      const theirs = new EigenvalueDecomposition(new Matrix(rows(m, 3)), { assumeSymmetric: true })
        .realEigenvalues;
      for (const [i, value] of [...theirs].sort((p, q) => p - q).entries()) {
        expect(Math.abs((found[i] ?? 9) - value) / size).toBeLessThan(1e-13);
      }
      const trace = (m[0] ?? 0) + (m[4] ?? 0) + (m[8] ?? 0);
      expect(Math.abs(found[0] + found[1] + found[2] - trace) / size).toBeLessThan(1e-14);
      const squares = m.reduce((sum, one) => sum + one * one, 0);
      expect(Math.abs(found.reduce((sum, one) => sum + one * one, 0) - squares) / size ** 2).toBeLessThan(
        1e-13,
      );
    };
    fc.assert(
      fc.property(six, (upper) => {
        law(upper);
      }),
      RUNS,
    );
  });
  test("closed forms: meeting values, a nearly singular matrix, what is not finite", () => {
    expect(symmetricEigen3([2, 1, 0, 1, 2, 0, 0, 0, 5])).toEqual([1, 3, 5]);
    expect(symmetricEigen3([7, 0, 0, 0, 7, 0, 0, 0, 7])).toEqual([7, 7, 7]);
    const [low] = symmetricEigen3([1, 1, 1, 1, 1, 1, 1, 1, 1]);
    expect(Math.abs(low)).toBeLessThan(1e-15);
    expect(symmetricEigen3([1, Number.NaN, 0, 0, 1, 0, 0, 0, 1])).toEqual([NaN, NaN, NaN]);
  });
});

describe("solveBanded", () => {
  const banded = fc
    .record({ n: fc.integer({ min: 1, max: 40 }), width: fc.integer({ min: 0, max: 4 }) })
    .chain(({ n, width }) =>
      fc.record({
        n: fc.constant(n),
        width: fc.constant(width),
        factor: fc.array(entry, { minLength: n * (width + 1), maxLength: n * (width + 1) }),
        b: fc.array(entry, { minLength: n, maxLength: n }),
      }),
    );
  test("agrees with the full solve on random positive definite systems", () => {
    const law = ({
      n,
      width,
      factor,
      b,
    }: {
      n: number;
      width: number;
      factor: number[];
      b: number[];
    }): void => {
      const l = (i: number, j: number): number =>
        j > i || i - j > width
          ? 0
          : i === j
            ? 50 + Math.abs(factor[i * (width + 1)] ?? 0)
            : (factor[i * (width + 1) + i - j] ?? 0) / 10;
      const at = (i: number, j: number): number =>
        Array.from({ length: n }, (_, k) => l(i, k) * l(j, k)).reduce((p, q) => p + q, 0);
      const full = Array.from({ length: n * n }, (_, k) => at(Math.floor(k / n), k % n));
      const band = Float64Array.from({ length: n * (width + 1) }, (_, k) => {
        const i = Math.floor(k / (width + 1));
        const j = i - (k % (width + 1));
        return j < 0 ? Number.NaN : at(i, j);
      });
      const [x, y] = [
        solveBanded(band, Float64Array.from(b), n, width),
        solve(Float64Array.from(full), Float64Array.from(b), n),
      ];
      if (x === undefined || y === undefined) throw new Error("not solved");
      expect(backwardError(full, x, b)).toBeLessThan(1e-12);
      for (const [i, value] of y.entries()) expect(Math.abs((x[i] ?? 9) - value)).toBeLessThan(1e-9);
    };
    fc.assert(
      fc.property(banded, (one) => {
        law(one);
      }),
      { seed, numRuns: 100 },
    );
  });
  test("the second difference has its closed form; what is not positive definite is refused", () => {
    const n = 50;
    const band = Float64Array.from({ length: 2 * n }, (_, k) => (k % 2 === 0 ? 2 : -1));
    const x = solveBanded(band, new Float64Array(n).fill(1), n, 1);
    for (let i = 0; i < n; i++) expect(x?.[i]).toBeCloseTo(((i + 1) * (n - i)) / 2, 9);
    expect(solveBanded(Float64Array.of(1, 0, 1, 1), Float64Array.of(1, 1), 2, 1)).toBeUndefined();
    expect(solveBanded(Float64Array.of(-1), Float64Array.of(1), 1, 0)).toBeUndefined();
    expect(solveBanded(Float64Array.of(Number.NaN), Float64Array.of(1), 1, 0)).toBeUndefined();
  });
});
