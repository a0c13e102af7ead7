import { at, centroid, distance, type Point } from "./point.ts";

/** Chords of a polygon of a few sides give the length that dense noisy points would overstate. */
const FEW_SIDES = 24;
/** Points are averaged over this many standard uncertainties before chords are taken. */
const WINDOW_SD = 6;
/** Shortest step as part of the mean one, so that points set twice do no harm. */
const SHORTEST_STEP = 1e-2;

/** Length along the curve at each point by chords of the points, evened out where they lie closer than their uncertainty. */
export function chordKnots(points: readonly Point[], sd: number): Float64Array {
  const spacing = lengthBySides(points) / (points.length - 1);
  const reach = spacing > 0 ? Math.floor(Math.min(points.length / 4, (WINDOW_SD * sd) / spacing / 2)) : 0;
  const evened = points.map((_, i) => {
    const r = Math.min(reach, i, points.length - 1 - i);
    return centroid(points.slice(i - r, i + r + 1));
  });
  return rising(points.length, (i) => distance(at(evened, i - 1), at(evened, i)));
}

/** Length along the curve at each knot, by chords of smoothed places. */
export function arcKnots(y: Float64Array, z: Float64Array): Float64Array {
  return rising(y.length, (i) => distance([y[i - 1]!, z[i - 1]!], [y[i]!, z[i]!]));
}

function lengthBySides(points: readonly Point[]): number {
  const every = Math.max(1, Math.floor((points.length - 1) / FEW_SIDES));
  let length = 0;
  for (let i = 0; i < points.length - 1; i += every) {
    length += distance(at(points, i), at(points, Math.min(i + every, points.length - 1)));
  }
  return length;
}

function rising(n: number, step: (i: number) => number): Float64Array {
  const steps = Float64Array.from({ length: n }, (_, i) => (i === 0 ? 0 : step(i)));
  const shortest = (SHORTEST_STEP * steps.reduce((sum, one) => sum + one, 0)) / (n - 1) || SHORTEST_STEP;
  const knots = new Float64Array(n);
  for (let i = 1; i < n; i++) knots[i] = knots[i - 1]! + Math.max(shortest, steps[i]!);
  return knots;
}
