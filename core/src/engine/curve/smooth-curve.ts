import type { Curve } from "./curve.ts";
import { arcKnots, chordKnots } from "./parameter.ts";
import type { Point } from "./point.ts";
import { type Misses, smoothOver } from "./smooth-over.ts";
import type { Spline } from "./spline.ts";

/**
 * Smooths points taken along a plane curve: at least three, 2,000 and more in linear time. `sd` is the standard
 * uncertainty of one point across the curve; along it a miss only moves the point on the curve, and does not
 * count. The length along the curve is taken twice: by chords, then on the smooth curve.
 */
export function smoothCurve(points: readonly Point[], sd: number): Curve {
  const columns = [Float64Array.from(points, ([y]) => y), Float64Array.from(points, ([, z]) => z)];
  const first = splines(chordKnots(points, sd), columns, sd);
  const [y, z] = sd > 0 ? splines(arcKnots(first[0].value, first[1].value), columns, sd) : first;
  return { y, z, length: y.knots[y.knots.length - 1]! };
}

function splines(
  knots: Float64Array,
  columns: readonly Float64Array[],
  sd: number,
): readonly [Spline, Spline] {
  const [y, z] = smoothOver(knots, columns, sd, missesAcross);
  if (y === undefined || z === undefined) throw new RangeError("a plane curve has two coordinates");
  return [
    { knots, ...y },
    { knots, ...z },
  ];
}

/** Only the part of each miss that lies across the smooth curve; its direction is that of the chord about the point. */
const missesAcross: Misses = ([y, z], [yRead, zRead]) => {
  if (!y || !z || !yRead || !zRead) return 0;
  const last = yRead.length - 1;
  let sum = 0;
  for (let i = 0; i <= last; i++) {
    const [a, b] = [Math.max(0, i - 1), Math.min(last, i + 1)];
    const [dy, dz] = [y.value[b]! - y.value[a]!, z.value[b]! - z.value[a]!];
    const across = (yRead[i]! - y.value[i]!) * dz - (zRead[i]! - z.value[i]!) * dy;
    sum += (across * across) / (dy * dy + dz * dz || 1);
  }
  return sum;
};
