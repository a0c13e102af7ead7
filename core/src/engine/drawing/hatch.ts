import type { At } from "../drawing.ts";

/** Distance between hatching lines, mm (ISO 128-50 leaves it to the size of the area). */
export const HATCH_PITCH = 2;

export type Slope = "rising" | "falling";

/**
 * Lines at 45 degrees cut to the inside of rings by the even-odd rule; rings that share an edge hatch as one.
 * The lines stand on one grid of the whole page, so that neighbouring areas meet.
 * @param pitch distance between lines, mm, over 0
 */
export function hatch(
  rings: readonly (readonly At[])[],
  pitch: number,
  slope: Slope,
): readonly (readonly [At, At])[] {
  const sign = slope === "rising" ? 1 : -1;
  // Every line is one value of c = x + sign y; along it t = x - sign y runs.
  const step = pitch * Math.sqrt(2);
  const turned = rings.map((ring) => ring.map(([x, y]): At => [x + sign * y, x - sign * y]));
  const [low, high] = reach(turned);
  const lines: (readonly [At, At])[] = [];
  // Half a step off the grid: a line through a corner on a round figure would count it twice or not at all.
  for (let k = Math.ceil(low / step - 0.5); (k + 0.5) * step < high; k++) {
    const c = (k + 0.5) * step;
    for (const [from, to] of runs(crossings(turned, c))) lines.push([back(c, from, sign), back(c, to, sign)]);
  }
  return lines;
}

function reach(rings: readonly (readonly At[])[]): readonly [number, number] {
  let low = Infinity;
  let high = -Infinity;
  for (const ring of rings) for (const [c] of ring) [low, high] = [Math.min(low, c), Math.max(high, c)];
  return [low, high];
}

function back(c: number, t: number, sign: number): At {
  return [(c + t) / 2, ((c - t) / 2) * sign];
}

function crossings(rings: readonly (readonly At[])[], c: number): number[] {
  const at: number[] = [];
  for (const ring of rings) {
    ring.forEach(([c0, t0], i) => {
      const [c1, t1] = ring[(i + 1) % ring.length] ?? [c0, t0];
      if (c0 <= c !== c1 <= c) at.push(t0 + ((c - c0) / (c1 - c0)) * (t1 - t0));
    });
  }
  return at.sort((a, b) => a - b);
}

/** Crossings two by two; runs that touch, as over a shared edge, become one. */
function runs(at: readonly number[]): (readonly [number, number])[] {
  const joined: [number, number][] = [];
  for (let i = 0; i + 1 < at.length; i += 2) {
    const from = at[i] ?? 0;
    const to = at[i + 1] ?? 0;
    const last = joined.at(-1);
    if (last && from - last[1] < 1e-6) last[1] = to;
    else if (to - from > 1e-6) joined.push([from, to]);
  }
  return joined;
}
