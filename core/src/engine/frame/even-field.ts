/**
 * Values at even steps from 0 to `length` as a smooth function: cubic pieces whose slope at each step is that of
 * the chord about it. Straight on beyond the end; before the start it stays what it is there.
 */
export function evenField(values: Float64Array, length: number): (x: number) => number {
  const last = values.length - 1;
  const step = length / last;
  const slope = (i: number): number =>
    i === 0
      ? values[1]! - values[0]!
      : i === last
        ? values[last]! - values[last - 1]!
        : (values[i + 1]! - values[i - 1]!) / 2;
  return (x) => {
    const at = Math.max(0, x / step);
    if (at >= last) return values[last]! + (at - last) * slope(last);
    const i = Math.floor(at);
    const t = at - i;
    const [a, b] = [values[i]!, values[i + 1]!];
    const [p, q] = [slope(i), slope(i + 1)];
    return a + t * (p + t * (3 * (b - a) - 2 * p - q + t * (2 * (a - b) + p + q)));
  };
}
