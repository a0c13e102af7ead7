import type { At } from "../drawing.ts";

export interface Window {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The parts of an open line that lie within a window, in order (Liang and Barsky's way, from memory). */
export function clipped(points: readonly At[], window: Window): readonly (readonly At[])[] {
  const parts: At[][] = [];
  for (let i = 0; i + 1 < points.length; i++) {
    const seen = within(points[i] ?? [0, 0], points[i + 1] ?? [0, 0], window);
    if (!seen) continue;
    const last = parts.at(-1);
    const end = last?.at(-1);
    if (last && end && end[0] === seen[0][0] && end[1] === seen[0][1]) last.push(seen[1]);
    else parts.push([seen[0], seen[1]]);
  }
  return parts;
}

function within(from: At, to: At, { left, top, right, bottom }: Window): readonly [At, At] | undefined {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  let [start, stop] = [0, 1];
  const edges = [
    [-dx, from[0] - left],
    [dx, right - from[0]],
    [-dy, from[1] - top],
    [dy, bottom - from[1]],
  ] as const;
  for (const [slope, room] of edges) {
    if (slope === 0 && room < 0) return undefined;
    if (slope < 0) start = Math.max(start, room / slope);
    if (slope > 0) stop = Math.min(stop, room / slope);
  }
  if (start > stop) return undefined;
  const at = (t: number): At => (t === 0 ? from : t === 1 ? to : [from[0] + t * dx, from[1] + t * dy]);
  return [at(start), at(stop)];
}
