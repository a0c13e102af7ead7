/** A point of a plane; lengths in the caller's unit (mm in this program). */
export type Point = readonly [number, number];

export const distance = (a: Point, b: Point): number =>
  Math.sqrt((a[0] - b[0]) * (a[0] - b[0]) + (a[1] - b[1]) * (a[1] - b[1]));

/** Point i of a list that the caller knows to hold it. */
export function at(points: readonly Point[], i: number): Point {
  const point = points[i];
  if (point === undefined) throw new RangeError(`no point ${i} among ${points.length}`);
  return point;
}

export function centroid(points: readonly Point[]): Point {
  let a = 0;
  let b = 0;
  for (const [u, v] of points) {
    a += u;
    b += v;
  }
  return [a / points.length, b / points.length];
}
