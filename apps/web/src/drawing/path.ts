import type { Point } from "./contours.ts";

const short = (mm: number) => String(Math.round(mm * 100) / 100);

/** Straight pieces through points, as an SVG path. */
export function straight(points: readonly Point[], closed = false): string {
  const steps = points.map(([x, y], index) => `${index === 0 ? "M" : "L"}${short(x)} ${short(y)}`);
  return steps.join("") + (closed ? "Z" : "");
}

/** A smooth curve through points (Catmull-Rom pieces as cubic curves): for the look only, no figure is read from it. */
export function smooth(points: readonly Point[]): string {
  const at = (index: number): Point => points[Math.min(Math.max(index, 0), points.length - 1)] ?? [0, 0];
  let path = `M${at(0).map(short).join(" ")}`;
  for (let index = 0; index < points.length - 1; index += 1) {
    const [a, b, c, d] = [at(index - 1), at(index), at(index + 1), at(index + 2)];
    const out: Point = [b[0] + (c[0] - a[0]) / 6, b[1] + (c[1] - a[1]) / 6];
    const into: Point = [c[0] - (d[0] - b[0]) / 6, c[1] - (d[1] - b[1]) / 6];
    path += `C${[...out, ...into, ...c].map(short).join(" ")}`;
  }
  return path;
}
