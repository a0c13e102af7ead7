import { type Draw, fallAt, heightAt } from "./random-case.ts";

/**
 * The same problem worked a second way, from the written formulas alone: its own cells, back (slopes by
 * differences of heights), rotation by matrices multiplied out, the law by bisection, the tangent by
 * differences of the residual. Shares no code with the program and is a hundred times slower.
 */
export interface PlainRest {
  readonly pose: readonly [number, number, number];
  readonly pressure: readonly number[];
}

type Vec = readonly [number, number, number];
interface PlainCell {
  readonly at: Vec;
  readonly area: number;
  readonly thickness: number;
}

export function restPlainly(draw: Draw): PlainRest {
  const cells = cellsOf(draw);
  // A pose that balances may be one on which nothing stands: then from another lean.
  for (const pitch of LEANS) {
    for (const roll of LEANS) {
      const pose = downFrom(draw, cells, [sinkUntilHeld(draw, cells, pitch, roll), pitch, roll]);
      if (pose) return { pose, pressure: cells.map((cell) => pressureOn(draw, cell, pose).p) };
    }
  }
  throw new Error("the plain way found no rest");
}

/** Pitch and roll to start from, rad. */
const LEANS = [0, 0.04, -0.04, 0.08, -0.08];

/** Damped Newton; undefined where it does not end, or ends at a pose that does not stand. */
function downFrom(draw: Draw, cells: readonly PlainCell[], start: Vec): Vec | undefined {
  const residual = (q: Vec): Vec => residualOf(draw, cells, q);
  const size = (g: Vec): number => Math.max(Math.abs(g[0]), Math.abs(g[1]) / 200, Math.abs(g[2]) / 200);
  let q = start;
  for (let round = 0; round < 100; round++) {
    const g = residual(q);
    const tangent = slopes(residual, q);
    if (size(g) < 1e-9 * draw.weightN) return stands(tangent) ? q : undefined;
    const step = solve(tangent, g);
    let part = Math.min(1, 0.05 / Math.max(Math.abs(step[1]), Math.abs(step[2])));
    while (part > 1e-3 && size(residual(along(q, step, part))) > size(g)) part /= 2;
    q = along(q, step, part);
  }
  return undefined;
}

/** Whether the symmetric part of the tangent, given by columns, is positive definite: Sylvester's minors. */
function stands(columns: [Vec, Vec, Vec]): boolean {
  const s = (i: 0 | 1 | 2, j: 0 | 1 | 2): number => (columns[j][i] + columns[i][j]) / 2;
  const rows: [Vec, Vec, Vec] = [
    [s(0, 0), s(0, 1), s(0, 2)],
    [s(1, 0), s(1, 1), s(1, 2)],
    [s(2, 0), s(2, 1), s(2, 2)],
  ];
  return s(0, 0) > 0 && s(0, 0) * s(1, 1) > s(0, 1) ** 2 && dot(rows[0], cross(rows[1], rows[2])) > 0;
}

/** Lowers the body, leaning so, until the vertical force is the load: bisection. */
function sinkUntilHeld(draw: Draw, cells: readonly PlainCell[], pitch: number, roll: number): number {
  let [high, low] = [100, -200];
  while (high - low > 0.01) {
    const middle = (high + low) / 2;
    if (residualOf(draw, cells, [middle, pitch, roll])[0] < 0) high = middle;
    else low = middle;
  }
  return low;
}

function along(q: Vec, step: Vec, part: number): Vec {
  return [q[0] + part * step[0], q[1] + part * step[1], q[2] + part * step[2]];
}

/** Columns of -dg/dq by central differences. */
function slopes(residual: (q: Vec) => Vec, q: Vec): [Vec, Vec, Vec] {
  const column = (j: number, e: number): Vec => {
    const moved = (by: number): Vec =>
      residual([q[0] + (j === 0 ? by : 0), q[1] + (j === 1 ? by : 0), q[2] + (j === 2 ? by : 0)]);
    const [up, down] = [moved(e), moved(-e)];
    return [(down[0] - up[0]) / (2 * e), (down[1] - up[1]) / (2 * e), (down[2] - up[2]) / (2 * e)];
  };
  return [column(0, 1e-4), column(1, 1e-6), column(2, 1e-6)];
}

function solve([a, b, c]: [Vec, Vec, Vec], g: Vec): Vec {
  const det = dot(a, cross(b, c));
  return [dot(g, cross(b, c)) / det, dot(a, cross(g, c)) / det, dot(a, cross(b, g)) / det];
}

function residualOf(draw: Draw, cells: readonly PlainCell[], q: Vec): Vec {
  const pitchAxis: Vec = [0, 1, 0];
  const rollAxis: Vec = [Math.cos(q[1]), 0, -Math.sin(q[1])];
  let force = 0;
  let torque: Vec = [0, 0, 0];
  const add = (arm: Vec, f: Vec): void => {
    const t = cross(arm, f);
    force += f[2];
    torque = [torque[0] + t[0], torque[1] + t[1], torque[2] + t[2]];
  };
  for (const cell of cells) {
    const { f, arm } = pressureOn(draw, cell, q);
    add(arm, f);
  }
  for (const [side, strap] of draw.strapN.entries()) {
    const out = side === 0 ? -1 : 1;
    add(turned([90 - 215, out * 150, -100], q), [0, out * 0.3 * strap, -strap]);
  }
  const seat: Vec = [draw.at[0] - 215, draw.at[1], draw.at[2]];
  add(draw.turnsWithBody ? turned(seat, q) : seat, [0, 0, -draw.weightN]);
  return [force, dot(torque, pitchAxis), dot(torque, rollAxis)];
}

function pressureOn(draw: Draw, cell: PlainCell, q: Vec): { p: number; f: Vec; arm: Vec } {
  const arm = turned([cell.at[0] - 215, cell.at[1], cell.at[2]], q);
  const [x, y, z] = [arm[0] + 215 + draw.slide[0], arm[1] + draw.slide[1], arm[2] + q[0]];
  const e = 1e-3;
  const bx = (back(draw, x + e, y) - back(draw, x - e, y)) / (2 * e);
  const by = (back(draw, x, y + e) - back(draw, x, y - e)) / (2 * e);
  const long = Math.sqrt(1 + bx * bx + by * by);
  const p = pressureAt(draw, cell, (back(draw, x, y) - z) / long);
  // Friction up the cross slope; eased in as a cubic below a slope of 0.02, which only the level tail meets.
  const ease = Math.abs(by) < 0.02 ? 1.5 * (by / 0.02) - 0.5 * (by / 0.02) ** 3 : Math.sign(by);
  const up = (draw.friction * ease) / Math.sqrt(1 + by * by);
  const pa = p * cell.area;
  return { p, f: [(-pa * bx) / long, pa * (-by / long + up), pa * (1 / long + up * by)], arm };
}

function pressureAt({ law }: Draw, { thickness }: PlainCell, d: number): number {
  if (d <= 0) return 0;
  if (law === "linear") return (0.03 / thickness) * d;
  if (law === "series") return d / (thickness / 0.1 + 40 / 0.06);
  let [low, high] = [0, 0.6 * thickness];
  for (let i = 0; i < 100; i++) {
    const upper = (low + high) / 2;
    const p = (0.1 * upper) / thickness / (1 - upper / thickness / 0.6);
    if (upper + (p * 40) / 0.06 < d) low = upper;
    else high = upper;
  }
  return ((d - low) * 0.06) / 40;
}

function back({ back: b, lean, twist }: Draw, x: number, y: number): number {
  const at = (coefficients: readonly number[]): number =>
    coefficients.reduce((sum, c, i) => sum + c * (x / b.L) ** i, 0);
  const [s, c, k] = [at(b.s), at(b.c), at(b.k)];
  const line = -b.H * (1 - ((x - b.xd) / b.xd) ** 2) - b.tilt * x;
  return line - s * (Math.sqrt(y * y + c * c) - c) - (k * y * y) / 2 + lean * y + twist * x * y;
}

function cellsOf(draw: Draw): PlainCell[] {
  const cells: PlainCell[] = [];
  for (const side of [0, 1] as const) {
    for (let i = 0; i < draw.nx; i++) {
      for (let j = 0; j < 8; j++)
        cells.push(cellOf(draw, side, ((i + 0.5) * 430) / draw.nx, (j + 0.5) / 8 - 0.5));
    }
  }
  return cells;
}

function cellOf(draw: Draw, side: 0 | 1, x: number, part: number): PlainCell {
  const width = 105 + (15 * x) / 430;
  const fall = fallAt(x) + draw.fall[side];
  const v = part * width;
  const bulge = v ** 2 / 600;
  const yc = 37.5 + draw.edge[side] + (width / 2) * Math.cos(fall);
  const y = yc + v * Math.cos(fall) + bulge * Math.sin(fall);
  const z = heightAt(x) - v * Math.sin(fall) + bulge * Math.cos(fall) - 50;
  const open = (draw.spreadMm / 250) * (0.18 + 0.82 * (1 - x / 430) ** 1.5);
  const out = side === 0 ? -1 : 1;
  return {
    at: [x, out * (y * Math.cos(open) - z * Math.sin(open)), 50 + y * Math.sin(open) + z * Math.cos(open)],
    area: (430 / draw.nx) * (width / 8),
    thickness: 25 + (10 * x) / 430,
  };
}

/** R v with R = Ry(pitch) Rx(roll). */
function turned([x, y, z]: Vec, [, pitch, roll]: Vec): Vec {
  const [ry, rz] = [y * Math.cos(roll) - z * Math.sin(roll), y * Math.sin(roll) + z * Math.cos(roll)];
  return [x * Math.cos(pitch) + rz * Math.sin(pitch), ry, -x * Math.sin(pitch) + rz * Math.cos(pitch)];
}

function cross(a: Vec, b: Vec): Vec {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

function dot(a: Vec, b: Vec): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}
