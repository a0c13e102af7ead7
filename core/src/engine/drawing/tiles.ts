/** One stretch of a drawing on one page, mm. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * Cuts a length into page-wide stretches that overlap, laid evenly about its middle: two stretches meet over it.
 * @param overlap mm; RangeError unless it is under `page`
 */
export function tiles(from: number, to: number, page: number, overlap: number): readonly Stretch[] {
  if (!(page > overlap)) throw new RangeError(`pages of ${page} mm cannot overlap by ${overlap} mm`);
  const count = Math.max(1, Math.ceil((to - from - overlap) / (page - overlap)));
  const first = (from + to - count * page + (count - 1) * overlap) / 2;
  if (to - from <= page) return [{ from: (from + to - page) / 2, to: (from + to + page) / 2 }];
  return Array.from({ length: count }, (_, i) => {
    const start = first + i * (page - overlap);
    return { from: start, to: start + page };
  });
}
