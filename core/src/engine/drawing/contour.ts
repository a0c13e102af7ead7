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

/**
 * Where the values lie at or over `level`: one ring for each run of meshes that lie over it whole, and one for each
 * piece of a triangle at its edge, linear within it.
 */
export function areasOver(net: Net, level: number): readonly (readonly At[])[] {
  const rings: (readonly At[])[] = [];
  for (let i = 0; i + 1 < net.along; i++) {
    for (let j = 0; j + 1 < net.across; j++) {
      let end = j;
      while (end + 1 < net.across && isOver(net, level, i, end)) end++;
      if (end > j) rings.push(strip(net, i, j, end));
      j = end;
      if (j + 1 < net.across) rings.push(...pieces(net, level, i, j));
    }
  }
  return rings;
}

/** All four corners of mesh (i, j) at or over the level. */
function isOver({ value, across }: Net, level: number, i: number, j: number): boolean {
  const k = i * across + j;
  return [k, k + 1, k + across, k + across + 1].every((corner) => (value[corner] ?? 0) >= level);
}

/** The meshes of row i from point `from` to point `to`, as one ring. */
function strip({ at, across }: Net, i: number, from: number, to: number): readonly At[] {
  const row = (n: number) => at.slice(n * across + from, n * across + to + 1);
  return [...row(i), ...row(i + 1).reverse()];
}

function pieces(net: Net, level: number, i: number, j: number): readonly (readonly At[])[] {
  return trianglesOf(net, level, i, j)
    .map((corners) => corners.flatMap((from, k) => kept(from, corners[(k + 1) % 3] ?? from)))
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
  const out: (readonly Corner[])[] = [];
  for (let i = 0; i + 1 < net.along; i++) {
    for (let j = 0; j + 1 < net.across; j++) out.push(...trianglesOf(net, level, i, j));
  }
  return out;
}

function trianglesOf(net: Net, level: number, i: number, j: number): readonly (readonly Corner[])[] {
  const corner = (di: number, dj: number): Corner => {
    const k = (i + di) * net.across + j + dj;
    return { at: net.at[k] ?? [0, 0], over: (net.value[k] ?? 0) - level };
  };
  const [a, b, c, d] = [corner(0, 0), corner(0, 1), corner(1, 1), corner(1, 0)];
  return [
    [a, b, c],
    [a, c, d],
  ];
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
