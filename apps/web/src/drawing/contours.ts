export type Point = readonly [number, number];

/** A field of values on a net of nx by nv knots that need not be square; index i * nv + j. */
export interface Net {
  readonly nx: number;
  readonly nv: number;
  readonly at: (i: number, j: number) => Point;
  readonly value: (i: number, j: number) => number;
}

/**
 * Closed loops around everything at or above `level`. The net is wrapped in a rim: once with its own edge values
 * and once with zero in the same place, so that a loop runs along the edge instead of ending there.
 * Loops turn one way around high ground and the other around hollows: fill them with the non-zero rule.
 */
export function contours(net: Net, level: number): Point[][] {
  const next = new Map<number, { to: number; from: Point }>();
  for (let i = -2; i <= net.nx; i += 1) for (let j = -2; j <= net.nv; j += 1) cross(net, level, i, j, next);
  return joined(next);
}

const held = (n: number, most: number) => Math.min(Math.max(n, 0), most - 1);
const onNet = (n: number, most: number) => n >= -1 && n <= most;

function valueOf(net: Net, i: number, j: number): number {
  if (!onNet(i, net.nx) || !onNet(j, net.nv)) return Number.NEGATIVE_INFINITY;
  return net.value(held(i, net.nx), held(j, net.nv));
}

/** Names the edge of the wrapped net from knot (i, j) one step along x (0) or v (1). */
const edge = (net: Net, i: number, j: number, way: 0 | 1) => ((i + 2) * (net.nv + 6) + j + 2) * 2 + way;

function pointOn(net: Net, level: number, i: number, j: number, k: number, l: number): Point {
  const a = valueOf(net, i, j);
  const b = valueOf(net, k, l);
  const [ax, ay] = net.at(held(i, net.nx), held(j, net.nv));
  const [bx, by] = net.at(held(k, net.nx), held(l, net.nv));
  const part = Number.isFinite(a) && Number.isFinite(b) ? (level - a) / (b - a) : 0.5;
  return [ax + (bx - ax) * part, ay + (by - ay) * part];
}

/** The pieces of loop inside one mesh, high ground on the left of each. */
function cross(net: Net, level: number, i: number, j: number, next: Map<number, { to: number; from: Point }>): void {
  const high = [valueOf(net, i, j), valueOf(net, i + 1, j), valueOf(net, i + 1, j + 1), valueOf(net, i, j + 1)].map((v) => v >= level);
  const sides = [
    { id: edge(net, i, j, 0), at: () => pointOn(net, level, i, j, i + 1, j) },
    { id: edge(net, i + 1, j, 1), at: () => pointOn(net, level, i + 1, j, i + 1, j + 1) },
    { id: edge(net, i, j + 1, 0), at: () => pointOn(net, level, i, j + 1, i + 1, j + 1) },
    { id: edge(net, i, j, 1), at: () => pointOn(net, level, i, j, i, j + 1) },
  ];
  for (let corner = 0; corner < 4; corner += 1) {
    if (!high[corner] || high[(corner + 3) % 4]) continue;
    let last = corner;
    while (high[(last + 1) % 4]) last += 1;
    const leave = sides[last % 4];
    const enter = sides[(corner + 3) % 4];
    if (leave && enter) next.set(leave.id, { to: enter.id, from: leave.at() });
  }
}

function joined(next: Map<number, { to: number; from: Point }>): Point[][] {
  const loops: Point[][] = [];
  for (const [start] of next) {
    const loop: Point[] = [];
    for (let here = start, step = next.get(here); step; step = next.get(here)) {
      next.delete(here);
      loop.push(step.from);
      here = step.to;
    }
    if (loop.length > 2) loops.push(loop);
  }
  return loops;
}

/** Area inside a loop, positive or negative by its turn. */
export function area(loop: readonly Point[]): number {
  let sum = 0;
  for (const [index, [x, y]] of loop.entries()) {
    const [nextX, nextY] = loop[(index + 1) % loop.length] ?? [x, y];
    sum += x * nextY - nextX * y;
  }
  return sum / 2;
}
