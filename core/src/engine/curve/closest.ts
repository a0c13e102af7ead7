import { type Curve, pointAt } from "./curve.ts";
import { distance, type Point } from "./point.ts";
import { jetAt } from "./spline.ts";

/** Newton steps from the best of the samples; each squares the error. */
const STEPS = 6;

export interface Closest {
  readonly s: number;
  readonly point: Point;
  readonly distance: number;
  /** The nearest place is an end of the curve: the foot of no perpendicular. */
  readonly atEnd: boolean;
}

/** The nearest place of a curve to a point. `samples` are tried first, evenly spread (4 to each feature of the curve). */
export function closest(curve: Curve, to: Point, samples = 120): Closest {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i <= samples; i++) {
    const s = (curve.length * i) / samples;
    const far = distance(pointAt(curve, s), to);
    if (far < least) [best, least] = [s, far];
  }
  return closestNear(curve, to, best, curve.length / samples);
}

/** The nearest place within `reach` along the curve from a place that is known to be near it. */
export function closestNear(curve: Curve, to: Point, from: number, reach: number): Closest {
  const s = refine(curve, to, from, reach);
  const point = pointAt(curve, s);
  return { s, point, distance: distance(point, to), atEnd: s <= 0 || s >= curve.length };
}

function refine(curve: Curve, [a, b]: Point, from: number, reach: number): number {
  const lo = Math.max(0, from - reach);
  const hi = Math.min(curve.length, from + reach);
  let s = from;
  for (let i = 0; i < STEPS; i++) {
    const [y, y1, y2] = jetAt(curve.y, s);
    const [z, z1, z2] = jetAt(curve.z, s);
    const slope = (y - a) * y1 + (z - b) * z1;
    const bend = y1 * y1 + z1 * z1 + (y - a) * y2 + (z - b) * z2;
    const next = bend > 0 ? s - slope / bend : s - Math.sign(slope) * reach * 0.5;
    s = Math.min(hi, Math.max(lo, next));
  }
  return s;
}
