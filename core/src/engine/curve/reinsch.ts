import { solveBanded } from "../banded.ts";

/**
 * Cubic smoothing spline of values over knots. Reinsch, Numerische Mathematik 10 (1967) 177 to 183, in the
 * notation of Green and Silverman (1994) 2.3.3: minimise sum((v - g)^2 / sd^2) + penalty * integral(g''^2).
 * (R + strength Q'Q) gamma = Q'v and g = v - strength Q gamma, strength = penalty x sd^2; five diagonals, linear time.
 */
export interface Smoothed {
  readonly value: Float64Array;
  /** Second derivative at the knots; zero at both ends (natural spline). */
  readonly second: Float64Array;
}

/** The system of one set of knots and one strength; used for every coordinate of a curve. */
export interface SmoothingSystem {
  readonly steps: Float64Array;
  readonly strength: number;
  /** Lower half of R + strength Q'Q, three to a row, the diagonal first. */
  readonly band: Float64Array;
}

/** Knots strictly rising, at least three. Strength has the unit of length to the third power; zero interpolates. */
export function smoothingSystem(knots: Float64Array, strength: number): SmoothingSystem {
  const steps = Float64Array.from({ length: knots.length - 1 }, (_, i) => knots[i + 1]! - knots[i]!);
  const band = new Float64Array(3 * (knots.length - 2));
  for (let k = 0; k < knots.length - 2; k++) {
    const [a, b] = [1 / steps[k]!, 1 / steps[k + 1]!];
    band[3 * k] = (steps[k]! + steps[k + 1]!) / 3 + strength * (a * a + (a + b) * (a + b) + b * b);
    if (k > 0) band[3 * k + 1] = steps[k]! / 6 - strength * a * (1 / steps[k - 1]! + a + (a + b));
    if (k > 1) band[3 * k + 2] = (strength * a) / steps[k - 1]!;
  }
  return { steps, strength, band };
}

export function smoothValues({ steps, strength, band }: SmoothingSystem, values: Float64Array): Smoothed {
  const n = values.length;
  const slope = (i: number) => (values[i + 1]! - values[i]!) / steps[i]!;
  const bends = Float64Array.from({ length: n - 2 }, (_, k) => slope(k + 1) - slope(k));
  const inside = solveBanded(band, bends, n - 2, 2);
  if (inside === undefined) throw new RangeError("knots of a spline must rise");
  const second = new Float64Array(n);
  second.set(inside, 1);
  const value = new Float64Array(n);
  let before = 0;
  for (let i = 0; i < n; i++) {
    const after = i < n - 1 ? (second[i + 1]! - second[i]!) / steps[i]! : 0;
    value[i] = values[i]! - strength * (after - before);
    before = after;
  }
  return { value, second };
}
