/** Pairs of numbers out of what is typed so far; what is no pair is left out of the drawing, and refused when it is entered. */
function pairsOf(typed: string): readonly (readonly [number, number])[] {
  return typed
    .replace(/^(mm|cm|in)\b[\s:]*/, "")
    .split(";")
    .map((pair) =>
      pair
        .trim()
        .split(/[\s,]+/)
        .map(Number),
    )
    .flatMap(([across, up]) =>
      across !== undefined && up !== undefined && Number.isFinite(across) && Number.isFinite(up)
        ? [[across, up] as const]
        : [],
    );
}

/** The line as it is being typed, to true proportions: a slip of the hand shows as a spike. */
export function TraceTyped({ typed }: { typed: string }) {
  const pairs = pairsOf(typed);
  if (pairs.length < 2) return null;
  const xs = pairs.map(([across]) => across);
  const ys = pairs.map(([, up]) => -up);
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const width = Math.max(1, Math.max(...xs) - left);
  const height = Math.max(1, Math.max(...ys) - top);
  const margin = 0.05 * Math.max(width, height);
  const view = `${left - margin} ${top - margin} ${width + 2 * margin} ${height + 2 * margin}`;
  return (
    <svg className="trace-typed" viewBox={view} aria-hidden="true">
      <polyline points={pairs.map(([across, up]) => `${across},${-up}`).join(" ")} />
    </svg>
  );
}
