import { area, type Point } from "./contours.ts";

/** Words on lines: never nearer to each other or to the panel's edge than this, mm. */
const APART = 15;
const FROM_EDGE = 9;
/** Loops smaller than this carry no word, mm2. */
const SMALLEST = 150;

const isNear = (a: Point, b: Point, mm: number) => (a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2 < mm * mm;

/** Finds a free place on each loop for its value; a loop without a free place goes unlabelled. */
export function labelsOn(
  levels: readonly { readonly kPa: number; readonly loops: readonly Point[][] }[],
  edge: readonly Point[],
): { at: Point; words: string }[] {
  const labels: { at: Point; words: string }[] = [];
  for (const { kPa, loops } of [...levels].reverse()) {
    for (const loop of loops) {
      if (Math.abs(area(loop)) < SMALLEST) continue;
      const free = (point: Point) =>
        !labels.some((label) => isNear(label.at, point, APART)) &&
        !edge.some((one) => isNear(one, point, FROM_EDGE));
      const at = loop.find(free);
      if (at) labels.push({ at, words: String(kPa) });
    }
  }
  return labels;
}
