import type { At } from "../drawing.ts";

/** Values on a net of points, `across` of them in each of `along` rows; point (i, j) is at i * across + j. */
export interface Net {
  readonly along: number;
  readonly across: number;
  readonly at: readonly At[];
  readonly value: readonly number[];
}

interface Corner {
  readonly at: At;
  readonly over: number;
}

/** Where the values lie at or over `level`: one ring for each piece of a triangle of the net, linear within it. */
export function areasOver(net: Net, level: number): readonly (readonly At[])[] {
  return triangles(net, level)
    .map((corners) => corners.flatMap((from, i) => kept(from, corners[(i + 1) % 3] ?? from)))
    .filter((ring) => ring.length > 2);
}

/** The lines on which the values are `level`, each as long as it runs. */
export function linesAt(net: Net, level: number): readonly (readonly At[])[] {
  const pieces = triangles(net, level).flatMap((corners): (readonly [At, At])[] => {
    const cuts = corners.flatMap((from, i) => {
      const to = corners[(i + 1) % 3] ?? from;
      return from.over < 0 !== to.over < 0 ? [cut(from, to)] : [];
    });
    const [a, b] = cuts;
    // A corner exactly at the level gives a piece without length.
    return a && b && (a[0] !== b[0] || a[1] !== b[1]) ? [[a, b]] : [];
  });
  return chained(pieces);
}

function triangles(net: Net, level: number): readonly (readonly Corner[])[] {
  const corner = (i: number, j: number): Corner => {
    const k = i * net.across + j;
    return { at: net.at[k] ?? [0, 0], over: (net.value[k] ?? 0) - level };
  };
  const out: (readonly Corner[])[] = [];
  for (let i = 0; i + 1 < net.along; i++) {
    for (let j = 0; j + 1 < net.across; j++) {
      const [a, b, c, d] = [corner(i, j), corner(i, j + 1), corner(i + 1, j + 1), corner(i + 1, j)];
      out.push([a, b, c], [a, c, d]);
    }
  }
  return out;
}

/** The start of an edge where it is over, and the cut where the edge crosses. */
function kept(from: Corner, to: Corner): readonly At[] {
  const start = from.over >= 0 ? [from.at] : [];
  return from.over < 0 !== to.over < 0 ? [...start, cut(from, to)] : start;
}

/** Always reckoned from the upper end, so that two triangles cut their shared edge at the very same point. */
function cut(from: Corner, to: Corner): At {
  const [high, low] = from.over > to.over ? [from, to] : [to, from];
  const t = high.over / (high.over - low.over);
  return [high.at[0] + t * (low.at[0] - high.at[0]), high.at[1] + t * (low.at[1] - high.at[1])];
}

function chained(pieces: readonly (readonly [At, At])[]): readonly (readonly At[])[] {
  const key = ([x, y]: At) => `${x} ${y}`;
  const meeting = new Map<string, number[]>();
  pieces.forEach((piece, i) => {
    for (const end of piece) meeting.set(key(end), [...(meeting.get(key(end)) ?? []), i]);
  });
  const used = new Set<number>();
  const grown = (from: At): At[] => {
    const run = [from];
    for (let end: At | undefined = from; end; ) {
      const next: number | undefined = (meeting.get(key(end)) ?? []).find((i) => !used.has(i));
      const piece: readonly [At, At] | undefined = next === undefined ? undefined : pieces[next];
      if (next !== undefined) used.add(next);
      end = piece && (key(piece[0]) === key(end) ? piece[1] : piece[0]);
      if (end) run.push(end);
    }
    return run;
  };
  return pieces.flatMap((piece, i) => {
    if (used.has(i)) return [];
    used.add(i);
    return [[...grown(piece[0]).reverse(), ...grown(piece[1])]];
  });
}
