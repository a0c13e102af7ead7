import { type Curve, resample } from "./curve.ts";
import { layOver } from "./lay-over.ts";
import { at, type Point } from "./point.ts";
import { type Motion, move } from "./rigid.ts";
import { smoothCurve } from "./smooth-curve.ts";

/** Places at which repeats are laid over each other. */
const PLACES = 81;

export interface Average {
  readonly curve: Curve;
  /** Standard deviation of one repeat across the curve, over all places; 0 for a single curve. */
  readonly spread: number;
  /** Per repeat, the scale that would lay it best on the first; far from 1: not drawn in the same unit. */
  readonly scales: readonly number[];
}

/**
 * Repeats of one curve, each turned and shifted on its sheet as it may be: laid over the first (turn and shift,
 * never a reflection), averaged along the first one's normals, and put back to the mean turn and shift of all.
 */
export function averageCurves(curves: readonly [Curve, ...Curve[]]): Average {
  const [first, ...others] = curves;
  if (others.length === 0) return { curve: first, spread: 0, scales: [] };
  const base = resample(first, PLACES);
  const laid = others.map((other) => layOver(base, other));
  const sums = base.map((point, i) =>
    [point, ...laid.map(({ matched }) => matched[i])].filter((one) => one !== undefined),
  );
  const mean = sums.map(meanOf);
  const back = meanMotion(laid.map(({ back: one }) => one));
  const squares = sums.flatMap((row, i) => row.map((point) => squareFar(point, at(mean, i))));
  const freedom = sums.reduce((sum, row) => sum + row.length - 1, 0);
  return {
    curve: smoothCurve(
      mean.map((point) => move(back, point)),
      0,
    ),
    spread: Math.sqrt(squares.reduce((sum, one) => sum + one, 0) / Math.max(1, freedom)),
    scales: laid.map(({ scale }) => scale),
  };
}

/** Mean of the motions and of staying put (the first one's own). */
function meanMotion(motions: readonly Motion[]): Motion {
  const n = motions.length + 1;
  const cos = motions.reduce((sum, one) => sum + one.cos, 1);
  const sin = motions.reduce((sum, one) => sum + one.sin, 0);
  const size = Math.sqrt(cos * cos + sin * sin);
  const shift = (k: 0 | 1) => motions.reduce((sum, one) => sum + one.shift[k], 0) / n;
  return { cos: cos / size, sin: sin / size, shift: [shift(0), shift(1)] };
}

function meanOf(row: readonly Point[]): Point {
  return [
    row.reduce((sum, one) => sum + one[0], 0) / row.length,
    row.reduce((sum, one) => sum + one[1], 0) / row.length,
  ];
}

const squareFar = (a: Point, b: Point): number =>
  (a[0] - b[0]) * (a[0] - b[0]) + (a[1] - b[1]) * (a[1] - b[1]);
