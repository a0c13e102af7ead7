/**
 * Quantile of a list by the convention known as type 7 (Hyndman and Fan 1996): straight between the order
 * statistics, the least value at 0 and the greatest at 1. `sorted` rises and is not empty.
 */
export function quantile(sorted: readonly number[] | Float64Array, part: number): number {
  const place = part * (sorted.length - 1);
  const below = Math.floor(place);
  const lo = sorted[below];
  const hi = sorted[Math.min(below + 1, sorted.length - 1)];
  if (lo === undefined || hi === undefined) throw new RangeError("a quantile of nothing");
  return lo + (place - below) * (hi - lo);
}

/** Half of the central 95 % of the values: the expanded uncertainty U of a set of draws. Zero for fewer than two. */
export function spreadOf(values: readonly number[] | Float64Array): number {
  if (values.length < 2) return 0;
  const sorted = Float64Array.from(values).sort();
  return (quantile(sorted, 0.975) - quantile(sorted, 0.025)) / 2;
}
