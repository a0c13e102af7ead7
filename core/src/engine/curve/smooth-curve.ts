import { distance, at, type Point } from "./point.ts";
import { smoothingSystem, smoothValues, type Smoothed } from "./reinsch.ts";
import type { Curve } from "./curve.ts";
import { arcKnots, chordKnots } from "./parameter.ts";

/** The shortest wave that smoothing must keep, mm (assumption 40 to 80: the ridge of sharp withers is about a quarter of it). */
const WAVE_KEPT_MM = 60;
/** The part that smoothing may take off that wave. */
const PART_TAKEN = 0.1;
const TWO_PI = 6.283185307179586;
/** Halvings of the ratio of the penalty's bounds; 40 of them leave less than 1e-11 of it. */
const HALVINGS = 40;

interface Fitted {
  readonly knots: Float64Array;
  readonly y: Smoothed;
  readonly z: Smoothed;
}

/**
 * Smooths points taken along a plane curve (at least four, 2,000 and more in linear time). `sd` is the standard
 * uncertainty of one point across the curve. The penalty is the largest that leaves the points' mean square
 * distance at or below sd^2 (discrepancy principle, Morozov 1966), and never more than takes a tenth off a
 * wave of 60 mm: points that are better than stated are not flattened. sd = 0 interpolates.
 */
export function smoothCurve(points: readonly Point[], sd: number): Curve {
  const first = fitOver(chordKnots(points, sd), points, sd);
  const again = sd > 0 ? fitOver(arcKnots(first.y.value, first.z.value), points, sd) : first;
  return asCurve(again);
}

function asCurve({ knots, y, z }: Fitted): Curve {
  return { y: { knots, ...y }, z: { knots, ...z }, length: knots[knots.length - 1]! };
}

function fitOver(knots: Float64Array, points: readonly Point[], sd: number): Fitted {
  const y = Float64Array.from(points, (point) => point[0]);
  const z = Float64Array.from(points, (point) => point[1]);
  const fit = (strength: number): Fitted => {
    const system = smoothingSystem(knots, strength);
    return { knots, y: smoothValues(system, y), z: smoothValues(system, z) };
  };
  if (sd <= 0) return fit(0);
  const most = strongest(knots);
  const limit = sd * sd * points.length;
  if (misses(fit(most), points) <= limit) return fit(most);
  let [lo, hi] = [most * 1e-12, most];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = Math.sqrt(lo * hi);
    if (misses(fit(middle), points) <= limit) lo = middle;
    else hi = middle;
  }
  return fit(lo);
}

/** A long run of evenly spaced points passes a wave of wave number k in the part 1 / (1 + strength x spacing x k^4). */
function strongest(knots: Float64Array): number {
  const spacing = knots[knots.length - 1]! / (knots.length - 1);
  const k = TWO_PI / WAVE_KEPT_MM;
  return PART_TAKEN / ((1 - PART_TAKEN) * spacing * k * k * k * k);
}

/** Sum of the squared distances of the points from their places on the curve. */
function misses({ y, z }: Fitted, points: readonly Point[]): number {
  let sum = 0;
  for (let i = 0; i < points.length; i++) {
    const miss = distance(at(points, i), [y.value[i]!, z.value[i]!]);
    sum += miss * miss;
  }
  return sum;
}
