export const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * Own standard uncertainty of the mean of n repeats: the larger of instrument / sqrt(n) and the repeats' own
 * standard error (published: JCGM 100:2008, 4.2.3). A lucky agreement never makes a reading better than its instrument.
 */
export function ownOfMean(instrumentOwn: number, repeats: readonly number[]): number {
  const n = Math.max(1, repeats.length);
  const byInstrument = instrumentOwn / Math.sqrt(n);
  if (n < 2) return byInstrument;
  const mean = meanOf(repeats);
  const variance = repeats.reduce((sum, value) => sum + (value - mean) * (value - mean), 0) / (n - 1);
  return Math.max(byInstrument, Math.sqrt(variance / n));
}
