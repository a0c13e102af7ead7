import { crossing, type Point } from "./crossing.ts";
import { extents, type Fault, fault, inUnit, tooSmall, type Unit } from "./outline-fault.ts";

/** Plausible outlines in mm. All are assumptions, wide enough for a Shetland pony and a Shire. */
const TRACE_WIDTH_MM = [60, 1100] as const;
const TRACE_SIDE_LEAST_MM = 30;
const TRACE_HEIGHT_MOST_MM = 450;
/** How far the line may pass from (0, 0) where it crosses the midline. */
const TOP_OFF_MM = 15;
/** Above the midline the muscles of a table back may stand this far. */
const ABOVE_TOP_MM = 40;

/** A trace across the back: near side first, both sides of the midline, top at (0, 0), no crossing. It may double back. */
export function checkTrace(points: readonly Point[], unit: Unit): readonly Fault[] {
  const same = repeatedPoint(points);
  if (same.length > 0) return same;
  const size = traceSize(points, unit);
  return size.length > 0 ? size : [...sides(points, unit), ...top(points, unit), ...uncrossed(points)];
}

function traceSize(points: readonly Point[], unit: Unit): Fault[] {
  const [width, height] = extents(points);
  if (width < TRACE_WIDTH_MM[0]) return [tooSmall(width, unit, "across", TRACE_WIDTH_MM)];
  if (width > TRACE_WIDTH_MM[1]) {
    return [
      fault(
        `${inUnit(width, unit)} across`,
        `${inUnit(TRACE_WIDTH_MM[0], unit)} to ${inUnit(TRACE_WIDTH_MM[1], unit)} across`,
      ),
    ];
  }
  if (height <= TRACE_HEIGHT_MOST_MM) return [];
  return [
    fault(
      `${inUnit(height, unit)} from lowest to highest`,
      `at most ${inUnit(TRACE_HEIGHT_MOST_MM, unit)} from lowest to highest`,
    ),
  ];
}

function sides(points: readonly Point[], unit: Unit): Fault[] {
  const first = points[0] ?? [0, 0];
  const last = points[points.length - 1] ?? [0, 0];
  const says = `first ${inUnit(first[0], unit)}, last ${inUnit(last[0], unit)}`;
  if (first[0] > 0 && last[0] < 0) {
    return [
      fault(
        says,
        "near side first: y is negative on the near (left) side and positive on the off side; this trace is the other way round",
      ),
    ];
  }
  const reach = Math.min(
    -Math.min(...points.map((point) => point[0])),
    Math.max(...points.map((point) => point[0])),
  );
  if (reach >= TRACE_SIDE_LEAST_MM && first[0] < 0 && last[0] > 0) return [];
  return [
    fault(
      says,
      `points on both sides of the midline, at least ${inUnit(TRACE_SIDE_LEAST_MM, unit)} to each, near side (negative y) first`,
    ),
  ];
}

function top(points: readonly Point[], unit: Unit): Fault[] {
  const highest = Math.max(...points.map((point) => point[1]));
  if (highest > ABOVE_TOP_MM) {
    return [
      fault(
        `a point ${inUnit(highest, unit)} above the midline`,
        `z goes up: points below the top of the back are negative; at most ${inUnit(ABOVE_TOP_MM, unit)} above it`,
      ),
    ];
  }
  const heights = midlineHeights(points);
  if (heights.length === 0 || heights.some((height) => Math.abs(height) <= TOP_OFF_MM)) return [];
  return [
    fault(
      `z ${inUnit(heights[0] ?? 0, unit)} where y is 0`,
      `the top of the back at (0, 0), within ${inUnit(TOP_OFF_MM, unit)}`,
    ),
  ];
}

function midlineHeights(points: readonly Point[]): number[] {
  return points.slice(1).flatMap((to, at) => {
    const from = points[at] ?? to;
    if (from[0] * to[0] > 0) return [];
    const part = from[0] === to[0] ? 0 : from[0] / (from[0] - to[0]);
    return [from[1] + part * (to[1] - from[1])];
  });
}

function repeatedPoint(points: readonly Point[]): Fault[] {
  const at = points.findIndex(
    (point, i) => i > 0 && point[0] === points[i - 1]?.[0] && point[1] === points[i - 1]?.[1],
  );
  return at < 0
    ? []
    : [fault(`the same point as the one before it (points ${at} and ${at + 1})`, "each point once", [at])];
}

function uncrossed(points: readonly Point[]): Fault[] {
  const crossed = crossing(points);
  if (!crossed) return [];
  const [a, b] = crossed;
  return [
    fault(
      `the line from point ${a + 1} to ${a + 2} crosses the line from point ${b + 1} to ${b + 2}`,
      "a line that does not cross itself",
      [a],
    ),
  ];
}
