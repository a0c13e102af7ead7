export type Point = readonly [number, number];

/** A field of values on a net of nx by nv knots that need not be square. */
export interface Net {
  readonly nx: number;
  readonly nv: number;
  readonly at: (i: number, j: number) => Point;
  readonly value: (i: number, j: number) => number;
}

/** A net with a rim around it: knot (i, j) at i * wide + j of each array. */
export interface Rimmed {
  readonly high: number;
  readonly wide: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly value: Float64Array;
}

/**
 * Wraps a net in a rim: once with its own edge values and once with the lowest of all values in the same place, so
 * that a loop runs along the edge instead of ending there.
 */
export function rimmed(net: Net): Rimmed {
  const high = net.nx + 4;
  const wide = net.nv + 4;
  const n = high * wide;
  const out = { high, wide, x: new Float64Array(n), y: new Float64Array(n), value: new Float64Array(n) };
  for (let i = 0; i < high; i += 1) {
    for (let j = 0; j < wide; j += 1) {
      const [k, l] = [held(i - 2, net.nx), held(j - 2, net.nv)];
      const [x, y] = net.at(k, l);
      const outermost = i === 0 || j === 0 || i === high - 1 || j === wide - 1;
      out.x[i * wide + j] = x;
      out.y[i * wide + j] = y;
      out.value[i * wide + j] = outermost ? Number.NEGATIVE_INFINITY : net.value(k, l);
    }
  }
  return out;
}

const held = (n: number, most: number) => Math.min(Math.max(n, 0), most - 1);

/** The four corners of a mesh in turn, and the side from each to the next: way 0 along i, 1 along j. */
const CORNERS = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
] as const;
const SIDES = [
  [0, 0, 0],
  [1, 0, 1],
  [0, 1, 0],
  [0, 0, 1],
] as const;

interface Step {
  readonly to: number;
  readonly from: Point;
}

/**
 * Closed loops around everything at or above `level`. They turn one way around high ground and the other around
 * hollows: fill them with the non-zero rule.
 */
export function contours(net: Rimmed, level: number): Point[][] {
  const next = new Map<number, Step>();
  for (let i = 0; i + 1 < net.high; i += 1)
    for (let j = 0; j + 1 < net.wide; j += 1) cross(net, level, i, j, next);
  return joined(next);
}

/** The pieces of loop inside one mesh, high ground on the same hand of each. */
function cross(net: Rimmed, level: number, i: number, j: number, next: Map<number, Step>): void {
  let high = 0;
  for (let c = 0; c < 4; c += 1) {
    const [di, dj] = CORNERS[c] ?? [0, 0];
    if ((net.value[(i + di) * net.wide + j + dj] ?? 0) >= level) high |= 1 << c;
  }
  if (high === 0 || high === 15) return;
  const isHigh = (corner: number) => (high >> (corner & 3)) & 1;
  for (let corner = 0; corner < 4; corner += 1) {
    if (!isHigh(corner) || isHigh(corner + 3)) continue;
    let last = corner;
    while (isHigh(last + 1)) last += 1;
    const leave = sideOf(net, i, j, last);
    next.set(leave.id, { to: sideOf(net, i, j, corner + 3).id, from: pointOn(net, level, leave.a, leave.b) });
  }
}

/** A side of a mesh: its own number among all sides, and the knots at its ends. */
function sideOf(net: Rimmed, i: number, j: number, side: number): { id: number; a: number; b: number } {
  const [di, dj, way] = SIDES[side & 3] ?? [0, 0, 0];
  const a = (i + di) * net.wide + j + dj;
  return { id: 2 * a + way, a, b: way === 0 ? a + net.wide : a + 1 };
}

function pointOn({ x, y, value }: Rimmed, level: number, a: number, b: number): Point {
  const [va = 0, vb = 0, xa = 0, xb = 0, ya = 0, yb = 0] = [value[a], value[b], x[a], x[b], y[a], y[b]];
  const part = Number.isFinite(va) && Number.isFinite(vb) ? (level - va) / (vb - va) : 0.5;
  return [xa + (xb - xa) * part, ya + (yb - ya) * part];
}

function joined(next: Map<number, Step>): Point[][] {
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
