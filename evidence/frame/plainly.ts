import { Matrix, solve } from "ml-matrix";
import type { Frame } from "../../core/src/engine/frame/index.ts";

/*
 * The same problem a second way, sharing no code: each element's matrix as books print it in its own axes, turned by a
 * matrix of 12 x 12, put into a full matrix, solved by a general library.
 */

/** Matrix of one element in its own axes. */
function printed(l: number, ea: number, gj: number, ei2: number, ei3: number): Matrix {
  const k = Matrix.zeros(12, 12);
  const both = (i: number, j: number, value: number) => {
    k.set(i, j, value);
    k.set(j, i, value);
  };
  for (const [i, j, sign] of [
    [0, 0, 1],
    [6, 6, 1],
    [0, 6, -1],
  ] as const)
    both(i, j, (sign * ea) / l);
  for (const [i, j, sign] of [
    [3, 3, 1],
    [9, 9, 1],
    [3, 9, -1],
  ] as const)
    both(i, j, (sign * gj) / l);
  const bend = (v1: number, t1: number, v2: number, t2: number, ei: number, sign: number) => {
    both(v1, v1, (12 * ei) / l ** 3);
    both(v2, v2, (12 * ei) / l ** 3);
    both(v1, v2, (-12 * ei) / l ** 3);
    both(v1, t1, (sign * 6 * ei) / l ** 2);
    both(v1, t2, (sign * 6 * ei) / l ** 2);
    both(v2, t1, (-sign * 6 * ei) / l ** 2);
    both(v2, t2, (-sign * 6 * ei) / l ** 2);
    both(t1, t1, (4 * ei) / l);
    both(t2, t2, (4 * ei) / l);
    both(t1, t2, (2 * ei) / l);
  };
  bend(1, 5, 7, 11, ei3, 1);
  bend(2, 4, 8, 10, ei2, -1);
  return k;
}

const cross = (a: number[], b: number[]): number[] => [
  (a[1] ?? 0) * (b[2] ?? 0) - (a[2] ?? 0) * (b[1] ?? 0),
  (a[2] ?? 0) * (b[0] ?? 0) - (a[0] ?? 0) * (b[2] ?? 0),
  (a[0] ?? 0) * (b[1] ?? 0) - (a[1] ?? 0) * (b[0] ?? 0),
];
const unit = (a: number[]): number[] => a.map((value) => value / Math.hypot(...a));

/** The whole stiffness, nothing held. */
export function fullMatrix(frame: Frame): Matrix {
  const whole = Matrix.zeros(2 * frame.nodes.length, 2 * frame.nodes.length);
  for (let e = 0; e < frame.ends.length / 2; e++) {
    const [a = 0, b = 0] = frame.ends.slice(2 * e, 2 * e + 2);
    const at = (node: number) => [...frame.nodes.slice(3 * node, 3 * node + 3)];
    const along = at(b).map((value, i) => value - (at(a)[i] ?? 0));
    const e1 = unit(along);
    const e3 = unit(cross(e1, [...frame.across.slice(3 * e, 3 * e + 3)]));
    const axes = [e1, cross(e3, e1), e3];
    const turn = Matrix.zeros(12, 12);
    for (let block = 0; block < 4; block++)
      for (let i = 0; i < 3; i++)
        for (let j = 0; j < 3; j++) turn.set(3 * block + i, 3 * block + j, axes[i]?.[j] ?? 0);
    const [ea = 0, gj = 0, ei2 = 0, ei3 = 0] = frame.stiffness.slice(4 * e, 4 * e + 4);
    const own = turn
      .transpose()
      .mmul(printed(Math.hypot(...along), ea, gj, ei2, ei3))
      .mmul(turn);
    const places = [a, b].flatMap((node) => [0, 1, 2, 3, 4, 5].map((i) => 6 * node + i));
    places.forEach((row, i) => {
      places.forEach((column, j) => {
        whole.set(row, column, whole.get(row, column) + own.get(i, j));
      });
    });
  }
  return whole;
}

/** Displacements with some unknowns held. */
export function movedPlainly(frame: Frame, fixed: readonly number[], loads: Float64Array): number[] {
  const whole = fullMatrix(frame);
  const free = [...loads.keys()].filter((i) => !fixed.includes(i));
  const found = solve(
    whole.selection(free, free),
    Matrix.columnVector(free.map((i) => loads[i] ?? 0)),
  ).to1DArray();
  const moved = Array.from(loads, () => 0);
  free.forEach((i, k) => {
    moved[i] = found[k] ?? Number.NaN;
  });
  return moved;
}
