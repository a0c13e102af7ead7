import type { Smoothed } from "./reinsch.ts";

/** A natural cubic spline of one coordinate: value and second derivative at rising knots; straight beyond its ends. */
export interface Spline extends Smoothed {
  readonly knots: Float64Array;
}

/** Value, first and second derivative at s. */
export type Jet = readonly [value: number, first: number, second: number];

export function jetAt(spline: Spline, s: number): Jet {
  const { knots, value, second } = spline;
  const last = knots.length - 1;
  if (s <= knots[0]!) return straight(jetIn(spline, 0, knots[0]!), s - knots[0]!);
  if (s >= knots[last]!) return straight(jetIn(spline, last - 1, knots[last]!), s - knots[last]!);
  return jetIn({ knots, value, second }, pieceOf(knots, s), s);
}

const straight = ([value, first]: Jet, ahead: number): Jet => [value + first * ahead, first, 0];

function jetIn({ knots, value, second }: Spline, i: number, s: number): Jet {
  const h = knots[i + 1]! - knots[i]!;
  const b = (s - knots[i]!) / h;
  const a = 1 - b;
  const [m0, m1] = [second[i]!, second[i + 1]!];
  return [
    a * value[i]! + b * value[i + 1]! + (((a * a * a - a) * m0 + (b * b * b - b) * m1) * h * h) / 6,
    (value[i + 1]! - value[i]!) / h + (((1 - 3 * a * a) * m0 + (3 * b * b - 1) * m1) * h) / 6,
    a * m0 + b * m1,
  ];
}

/** Index of the piece that holds s, by halving. */
export function pieceOf(knots: Float64Array, s: number): number {
  let lo = 0;
  let hi = knots.length - 2;
  while (lo < hi) {
    const mid = (lo + hi + 1) >> 1;
    if (knots[mid]! <= s) lo = mid;
    else hi = mid - 1;
  }
  return lo;
}
