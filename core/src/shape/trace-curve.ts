import { averageCurves } from "../engine/curve/average.ts";
import { crossings } from "../engine/curve/crossings.ts";
import { type Curve, pointAt } from "../engine/curve/curve.ts";
import type { Point } from "../engine/curve/point.ts";
import { smoothCurve } from "../engine/curve/smooth-curve.ts";
import type { Trace } from "../survey/case.ts";
import { POINT_MM } from "./trace-doubt.ts";

/** A side must be at least this long to tell a face, mm (assumption). */
const SHORTEST_SIDE_MM = 40;
/** A typed point this near to the midline is its top, mm. */
const AT_MIDLINE_MM = 2;
/** A repeat larger or smaller than the first by more than this was not drawn in the same unit. */
const SCALE_APART = 1.5;

export interface MeanTrace {
  readonly curve: Curve;
  /** The midline's place on the curve. */
  readonly top: number;
  /** Height of the top, from which depths are counted, mm. */
  readonly topMm: number;
  readonly repeats: number;
  /** Standard deviation of one repeat across the curve, mm. */
  readonly spreadMm: number;
}

/** The mean of all drawings of one place, or the word for the part of the readings that cannot be used. */
export function meanTrace(traces: readonly Trace[]): MeanTrace | "points" | "repeats" {
  const drawings = traces.flatMap((trace) => [trace.points, ...trace.repeats]);
  const [first, ...others] = drawings.map((points) => smoothCurve(pointsOf(points), POINT_MM));
  if (first === undefined) return "points";
  const { curve, spread, scales } = averageCurves([first, ...others]);
  if (scales.some((scale) => scale > SCALE_APART || scale < 1 / SCALE_APART)) return "repeats";
  const top = topOf(curve);
  if (top === undefined || Math.min(top, curve.length - top) < SHORTEST_SIDE_MM) return "points";
  return {
    curve,
    top,
    topMm: typedTop(drawings) ?? pointAt(curve, top)[1],
    repeats: drawings.length,
    spreadMm: spread,
  };
}

/** From the near side to the off side, whichever way they were typed: the sign of y says which side a point is on. */
function pointsOf(typed: Trace["points"]): Point[] {
  const points = typed.map(([y, z]): Point => [y, z]);
  const [first] = points[0] ?? [0];
  const [last] = points[points.length - 1] ?? [0];
  return first > last ? points.reverse() : points;
}

/**
 * The top as it was typed: heights are counted from it, so it has no doubt of its own, while smoothing takes a
 * little off a sharp ridge (0.3 mm where its radius is 12 mm). Mean over the drawings that have a point there.
 */
function typedTop(drawings: readonly Trace["points"][]): number | undefined {
  const tops = drawings.flatMap((points) => {
    const nearest = points.reduce(
      (best, point) => (Math.abs(point[0]) < Math.abs(best[0]) ? point : best),
      [Infinity, 0],
    );
    return Math.abs(nearest[0]) <= AT_MIDLINE_MM ? [nearest[1]] : [];
  });
  return tops.length > 0 ? tops.reduce((sum, one) => sum + one, 0) / tops.length : undefined;
}

/** Where the curve crosses the midline highest. */
function topOf(curve: Curve): number | undefined {
  let top: number | undefined;
  for (const s of crossings(curve, "y", 0)) {
    if (top === undefined || pointAt(curve, s)[1] > pointAt(curve, top)[1]) top = s;
  }
  return top;
}
