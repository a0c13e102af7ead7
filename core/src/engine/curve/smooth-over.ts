import { type Smoothed, smoothingSystem, smoothValues } from "./reinsch.ts";

/** The shortest wave that smoothing must keep, mm (assumption 40 to 80). */
const WAVE_KEPT_MM = 45;
/** The part that smoothing may take off that wave. */
const PART_TAKEN = 0.1;
const TWO_PI = 6.283185307179586;
/** Halvings of the ratio of the strength's bounds; 40 of them leave less than 1e-10 of it. */
const HALVINGS = 40;

/** Sum of the squared misses that count, of the smoothed coordinates against the read ones. */
export type Misses = (fits: readonly Smoothed[], columns: readonly Float64Array[]) => number;

/**
 * Smooths one or more coordinates over common knots, strictly rising, at least three. `sd` is the standard
 * uncertainty of one point. The strength is the largest that leaves the mean of the squared misses
 * at or below sd^2 (discrepancy principle, Morozov 1966), and never more than takes a tenth off a wave
 * of 45 mm: points that are better than stated are not flattened. sd = 0 interpolates.
 */
export function smoothOver(
  knots: Float64Array,
  columns: readonly Float64Array[],
  sd: number,
  misses: Misses,
): Smoothed[] {
  const fit = (strength: number): Smoothed[] => {
    const system = smoothingSystem(knots, strength);
    return columns.map((column) => smoothValues(system, column));
  };
  if (sd <= 0) return fit(0);
  const most = strongest(knots);
  const limit = sd * sd * knots.length;
  if (misses(fit(most), columns) <= limit) return fit(most);
  let [lo, hi] = [most * 1e-12, most];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = Math.sqrt(lo * hi);
    if (misses(fit(middle), columns) <= limit) lo = middle;
    else hi = middle;
  }
  return fit(lo);
}

/** A long run of evenly spaced points passes a wave of wave number k in the part 1 / (1 + strength x spacing x k^4). */
function strongest(knots: Float64Array): number {
  const spacing = (knots[knots.length - 1]! - knots[0]!) / (knots.length - 1);
  const k = TWO_PI / WAVE_KEPT_MM;
  return PART_TAKEN / ((1 - PART_TAKEN) * spacing * k * k * k * k);
}
