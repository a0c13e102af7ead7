import type { ContactProblem, Equilibrium } from "@treewright/core/engine/contact/problem.ts";
import { settle } from "@treewright/core/engine/contact/settle.ts";
import type { SampleSurface } from "@treewright/core/engine/surface.ts";

/** A level floor. */
export const floor: SampleSurface = (n, _x, _y, out) => {
  for (const values of [out.z, out.zx, out.zy, out.zxx, out.zxy, out.zyy]) values.fill(0, 0, n);
};

/** One cell: where it stands and its area, mm, mm2. */
export type Cell = readonly [x: number, y: number, z: number, area: number];

/** A body of bare cells of one stiffness (N/mm3) pressed on the floor by a load whose line stays put. */
export function pressed(
  cells: readonly Cell[],
  stiffness: number,
  weightN: number,
  loadX = 0,
): ContactProblem {
  const n = cells.length;
  const column = (at: 0 | 1 | 2 | 3): Float64Array => Float64Array.from(cells, (cell) => cell[at]);
  const marks = (): Uint8Array => new Uint8Array(n);
  return {
    cells: {
      n,
      x: column(0),
      y: column(1),
      z: column(2),
      area: column(3),
      third: marks(),
      side: marks(),
      inner: marks(),
    },
    law: { kind: "linear", stiffness: new Float64Array(n).fill(stiffness) },
    surface: floor,
    load: { weightN, at: { x: loadX, y: 0, z: 0 }, turnsWithBody: false, pulls: [] },
    friction: 0,
    across: { x: 0, y: 1 },
    pivot: { x: 0, y: 0, z: 0 },
    slide: { x: 0, y: 0 },
    compressionLimit: 0.7,
  };
}

export function restOf(problem: ContactProblem): Equilibrium {
  const rest = settle(problem);
  if (!rest.ok) throw new Error(`refused: ${rest.why}`);
  return rest;
}

/** Cells in `rings` rings of `sectors` out to a radius, at the height `heightAt(r)`. */
export function disc(
  radius: number,
  rings: number,
  sectors: number,
  heightAt: (r: number) => number,
): Cell[] {
  const dr = radius / rings;
  const cells: Cell[] = [];
  for (let i = 0; i < rings; i++) {
    const r = (i + 0.5) * dr;
    for (let j = 0; j < sectors; j++) {
      const angle = (2 * Math.PI * (j + 0.5)) / sectors;
      cells.push([r * Math.cos(angle), r * Math.sin(angle), heightAt(r), (2 * Math.PI * r * dr) / sectors]);
    }
  }
  return cells;
}

/** Cells of a rectangle about the origin, at the height `heightAt(y)`. */
export function rectangle(
  length: number,
  width: number,
  nx: number,
  ny: number,
  heightAt: (y: number) => number,
): Cell[] {
  const cells: Cell[] = [];
  const [dx, dy] = [length / nx, width / ny];
  for (let i = 0; i < nx; i++) {
    for (let j = 0; j < ny; j++) {
      const y = (j + 0.5) * dy - width / 2;
      cells.push([(i + 0.5) * dx - length / 2, y, heightAt(y), dx * dy]);
    }
  }
  return cells;
}

/** The load that sinks the body by `depth`, by the secant rule. */
export function loadAtDepth(cells: readonly Cell[], stiffness: number, depth: number, guess: number): number {
  const sunk = (load: number): number => -restOf(pressed(cells, stiffness, load)).pose.heave;
  let [a, b] = [0.9 * guess, 1.1 * guess];
  let [da, db] = [sunk(a) - depth, sunk(b) - depth];
  while (Math.abs(db) > 1e-10 * depth) {
    const next = b - (db * (b - a)) / (db - da);
    [a, da] = [b, db];
    b = next;
    db = sunk(b) - depth;
  }
  return b;
}
