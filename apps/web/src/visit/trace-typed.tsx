import { unitCalled } from "../road.ts";

/**
 * Pairs of numbers out of what is typed so far, mm; what is no pair is left out of the drawing, and refused when it is
 * entered. `beside`: the unit that is meant where the line begins with none.
 */
function pairsOf(typed: string, beside: string): Pairs {
  const begun = /^\s*(mm|cm|in)\b[\s:]*/.exec(typed);
  const times = timesOf(begun?.[1] ?? beside);
  return typed
    .slice(begun?.[0].length ?? 0)
    .split(";")
    .map((pair) =>
      pair
        .trim()
        .split(/[\s,]+/)
        .map(Number),
    )
    .flatMap(([across, up]) =>
      across !== undefined && up !== undefined && Number.isFinite(across) && Number.isFinite(up)
        ? [[times * across, times * up] as const]
        : [],
    );
}

/** How many mm a unit is; of one that is not known, as if it were mm. */
const timesOf = (unit: string): number => unitCalled(unit, "length")?.times ?? 1;

type Pairs = readonly (readonly [number, number])[];

/** Points of a case as typed in this unit, in mm; those that are no plain numbers are left out of the drawing. */
export function pairsIn(points: unknown, unit: string): Pairs {
  const times = timesOf(unit);
  if (!Array.isArray(points)) return [];
  return points.flatMap((point: unknown) => {
    const [across, up] = Array.isArray(point) ? point.map(Number) : [];
    return across !== undefined && up !== undefined && Number.isFinite(across + up)
      ? [[times * across, times * up] as const]
      : [];
  });
}

const lineOf = (pairs: Pairs): string => pairs.map(([across, up]) => `${across},${-up}`).join(" ");

/** The line as it is being typed over the one of the visit before, to true proportions: a slip of the hand shows as a spike. */
export function TraceTyped({ typed, beside, before }: { typed: string; beside: string; before: Pairs }) {
  const pairs = pairsOf(typed, beside);
  const all = [...pairs, ...before];
  if (all.length < 2) return null;
  const xs = all.map(([across]) => across);
  const ys = all.map(([, up]) => -up);
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const width = Math.max(1, Math.max(...xs) - left);
  const height = Math.max(1, Math.max(...ys) - top);
  const margin = 0.05 * Math.max(width, height);
  const view = `${left - margin} ${top - margin} ${width + 2 * margin} ${height + 2 * margin}`;
  return (
    <svg className="trace-typed" viewBox={view} aria-hidden="true">
      <polyline className="trace-before" points={lineOf(before)} />
      <polyline points={lineOf(pairs)} />
    </svg>
  );
}
