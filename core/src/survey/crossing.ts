/** A point of an outline: across (or along) and up, mm. */
export type Point = readonly [number, number];

interface Span {
  readonly at: number;
  readonly from: Point;
  readonly to: Point;
  /** Its box: least and most across, least and most up. */
  readonly least: Point;
  readonly most: Point;
}

const turn = (a: Point, b: Point, c: Point): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

const within = (a: Point, b: Point, c: Point): boolean =>
  Math.min(a[0], b[0]) <= c[0] &&
  c[0] <= Math.max(a[0], b[0]) &&
  Math.min(a[1], b[1]) <= c[1] &&
  c[1] <= Math.max(a[1], b[1]);

function meet(p: Span, q: Span): boolean {
  const a = turn(p.from, p.to, q.from);
  const b = turn(p.from, p.to, q.to);
  const c = turn(q.from, q.to, p.from);
  const d = turn(q.from, q.to, p.to);
  if (((a > 0 && b < 0) || (a < 0 && b > 0)) && ((c > 0 && d < 0) || (c < 0 && d > 0))) return true;
  return (
    (a === 0 && within(p.from, p.to, q.from)) ||
    (b === 0 && within(p.from, p.to, q.to)) ||
    (c === 0 && within(q.from, q.to, p.from)) ||
    (d === 0 && within(q.from, q.to, p.to))
  );
}

/**
 * Two stretches of a polyline that cross or touch, by the index of each stretch's first point; undefined when none do.
 * Neighbours share an end and are asked only whether the line folds back on itself. Swept along the axis on which
 * stretches overlap less, so that a thousand strokes to and fro cost no more than a plain line.
 */
export function crossing(points: readonly Point[]): readonly [number, number] | undefined {
  const spans = spansOf(points);
  const axis = overlap(spans, 0) <= overlap(spans, 1) ? 0 : 1;
  const other = axis === 0 ? 1 : 0;
  spans.sort((p, q) => p.least[axis] - q.least[axis]);
  for (let i = 0; i < spans.length; i += 1) {
    const p = spans[i];
    for (let j = i + 1; p && j < spans.length; j += 1) {
      const q = spans[j];
      if (!q || q.least[axis] > p.most[axis]) break;
      if (q.least[other] > p.most[other] || q.most[other] < p.least[other]) continue;
      const [first, second] = p.at < q.at ? [p, q] : [q, p];
      if (second.at - first.at === 1 ? foldsBack(first, second) : meet(first, second))
        return [first.at, second.at];
    }
  }
  return undefined;
}

/** How often the stretches cover the line's own extent along an axis. */
function overlap(spans: readonly Span[], axis: 0 | 1): number {
  const extent =
    Math.max(...spans.map(({ most }) => most[axis])) - Math.min(...spans.map(({ least }) => least[axis]));
  return (
    spans.reduce((sum, { least, most }) => sum + most[axis] - least[axis], 0) /
    Math.max(extent, Number.MIN_VALUE)
  );
}

const foldsBack = (p: Span, q: Span): boolean =>
  turn(p.from, p.to, q.to) === 0 &&
  (p.to[0] - p.from[0]) * (q.to[0] - q.from[0]) + (p.to[1] - p.from[1]) * (q.to[1] - q.from[1]) < 0;

function spansOf(points: readonly Point[]): Span[] {
  return points.slice(1).map((to, at) => {
    const from = points[at] ?? to;
    const least: Point = [Math.min(from[0], to[0]), Math.min(from[1], to[1])];
    const most: Point = [Math.max(from[0], to[0]), Math.max(from[1], to[1])];
    return { at, from, to, least, most };
  });
}
