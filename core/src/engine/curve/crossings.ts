import type { Curve } from "./curve.ts";
import { jetAt, type Spline } from "./spline.ts";

const HALVINGS = 50;

/** Every s at which the curve crosses the line y = level (or z = level), in rising order; touching without crossing is none. */
export function crossings(curve: Curve, of: "y" | "z", level: number): number[] {
  const spline = curve[of];
  const { knots } = spline;
  const found: number[] = [];
  // Half a piece at a time: a cubic piece may cross twice between two of its knots.
  for (let i = 0; i < knots.length - 1; i++) {
    const middle = (knots[i]! + knots[i + 1]!) / 2;
    for (const [lo, hi] of [
      [knots[i]!, middle],
      [middle, knots[i + 1]!],
    ] as const) {
      const s = crossingIn(spline, level, lo, hi);
      if (s !== undefined) found.push(s);
    }
  }
  return found;
}

function crossingIn(spline: Spline, level: number, lo: number, hi: number): number | undefined {
  const above = (s: number) => jetAt(spline, s)[0] >= level;
  const start = above(lo);
  if (above(hi) === start) return undefined;
  let [a, b] = [lo, hi];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (a + b) / 2;
    if (above(middle) === start) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}
