import type { Curve } from "./curve.ts";
import { arcKnots, chordKnots } from "./parameter.ts";
import type { Point } from "./point.ts";
import { smoothOver } from "./smooth-over.ts";
import type { Spline } from "./spline.ts";

/**
 * Smooths points taken along a plane curve: at least three, 2,000 and more in linear time. `sd` is the standard
 * uncertainty of one point across the curve (along it a miss only moves the point on the curve, so only one
 * coordinate's worth is allowed). The length along the curve is taken twice: by chords, then on the smooth curve.
 */
export function smoothCurve(points: readonly Point[], sd: number): Curve {
  const columns = [Float64Array.from(points, ([y]) => y), Float64Array.from(points, ([, z]) => z)];
  const first = splines(chordKnots(points, sd), columns, sd);
  const [y, z] = sd > 0 ? splines(arcKnots(first[0].value, first[1].value), columns, sd) : first;
  return { y, z, length: y.knots[y.knots.length - 1]! };
}

function splines(knots: Float64Array, columns: readonly Float64Array[], sd: number): readonly [Spline, Spline] {
  const [y, z] = smoothOver(knots, columns, sd);
  if (y === undefined || z === undefined) throw new RangeError("a plane curve has two coordinates");
  return [{ knots, ...y }, { knots, ...z }];
}
