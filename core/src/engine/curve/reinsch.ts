/**
 * Cubic smoothing spline of values over knots. Reinsch, Numerische Mathematik 10 (1967) 177 to 183, in the
 * notation of Green and Silverman (1994) 2.3.3: minimise sum((v - g)^2 / sd^2) + penalty * integral(g''^2).
 * (R + penalty sd^2 Q'Q) gamma = Q'v and g = v - penalty sd^2 Q gamma; five diagonals, so the time is linear.
 */
export interface Smoothed {
  readonly value: Float64Array;
  /** Second derivative at the knots; zero at both ends (natural spline). */
  readonly second: Float64Array;
}

/** The factors for one set of knots and one penalty; used for every coordinate of a curve. */
export interface Factors {
  readonly step: Float64Array;
  readonly diagonal: Float64Array;
  readonly first: Float64Array;
  readonly secondBelow: Float64Array;
  readonly strength: number;
}

/** Knots strictly rising, at least three. `strength` is penalty x sd^2, unit of length to the third power; zero interpolates. */
export function factorise(knots: Float64Array, strength: number): Factors {
  const n = knots.length;
  const step = Float64Array.from({ length: n - 1 }, (_, i) => knots[i + 1]! - knots[i]!);
  const m = n - 2;
  const diagonal = new Float64Array(m);
  const first = new Float64Array(m);
  const secondBelow = new Float64Array(m);
  for (let k = 0; k < m; k++) {
    const [a, b] = [1 / step[k]!, 1 / step[k + 1]!];
    let d = (step[k]! + step[k + 1]!) / 3 + strength * (a * a + (a + b) * (a + b) + b * b);
    let e = k + 1 < m ? step[k + 1]! / 6 - strength * (b * (a + b) + b * (b + 1 / step[k + 2]!)) : 0;
    const f = k + 2 < m ? strength * b * (1 / step[k + 2]!) : 0;
    if (k >= 1) {
      d -= diagonal[k - 1]! * first[k - 1]! * first[k - 1]!;
      e -= diagonal[k - 1]! * first[k - 1]! * secondBelow[k - 1]!;
    }
    if (k >= 2) d -= diagonal[k - 2]! * secondBelow[k - 2]! * secondBelow[k - 2]!;
    diagonal[k] = d;
    first[k] = e / d;
    secondBelow[k] = f / d;
  }
  return { step, diagonal, first, secondBelow, strength };
}

export function smoothValues(factors: Factors, values: Float64Array): Smoothed {
  const { step, strength } = factors;
  const n = values.length;
  const second = new Float64Array(n);
  for (let k = 1; k < n - 1; k++) {
    second[k] = (values[k + 1]! - values[k]!) / step[k]! - (values[k]! - values[k - 1]!) / step[k - 1]!;
  }
  solveInside(factors, second);
  const value = new Float64Array(n);
  let before = 0;
  for (let i = 0; i < n; i++) {
    const after = i < n - 1 ? (second[i + 1]! - second[i]!) / step[i]! : 0;
    value[i] = values[i]! - strength * (after - before);
    before = after;
  }
  return { value, second };
}

/** Solves in place for entries 1 to n - 2 of `v`; the two ends stay as they are. */
function solveInside({ diagonal, first, secondBelow }: Factors, v: Float64Array): void {
  const m = diagonal.length;
  for (let k = 0; k < m; k++) {
    if (k >= 1) v[k + 1]! -= first[k - 1]! * v[k]!;
    if (k >= 2) v[k + 1]! -= secondBelow[k - 2]! * v[k - 1]!;
  }
  for (let k = 0; k < m; k++) v[k + 1]! /= diagonal[k]!;
  for (let k = m - 2; k >= 0; k--) {
    v[k + 1]! -= first[k]! * v[k + 2]!;
    if (k + 2 < m) v[k + 1]! -= secondBelow[k]! * v[k + 3]!;
  }
}
