import type { SoftLayer } from "./soft-layer.ts";

/** Panel mesh: both calculations hand their normal forces to its nodes. Thirds and blocks end on nodes. */
export const ALONG = 36;
export const ACROSS = 10;
export const nodeOf = (i: number, j: number): number => i * (ACROSS + 1) + j;
export const nodeCount = (ALONG + 1) * (ACROSS + 1);

/** A map of normal forces, N, over the nodes of one panel. */
export type OnNodes = Float64Array;

/** Adds a force at (x, across) to the four nodes about it, as linear shape functions do. */
export function addTo(map: OnNodes, { panel }: SoftLayer, x: number, across: number, force: number): void {
  const u = (x / panel.lengthMm) * ALONG;
  const v = ((across + 1) / 2) * ACROSS;
  const [i, j] = [Math.min(ALONG - 1, Math.floor(u)), Math.min(ACROSS - 1, Math.floor(v))];
  for (const [di, dj] of [
    [0, 0],
    [1, 0],
    [0, 1],
    [1, 1],
  ] as const) {
    const part = (di === 1 ? u - i : 1 - u + i) * (dj === 1 ? v - j : 1 - v + j);
    map[nodeOf(i + di, j + dj)] = (map[nodeOf(i + di, j + dj)] ?? 0) + force * part;
  }
}

/** Sums over `rows` by `columns` even blocks of the panel; a node on a border counts half to each side. */
export function blocksOf(map: OnNodes, rows: number, columns: number): number[] {
  const sums = new Array<number>(rows * columns).fill(0);
  for (let i = 0; i <= ALONG; i++) {
    for (let j = 0; j <= ACROSS; j++) {
      for (const [row, part] of shares(i, ALONG, rows)) {
        for (const [column, other] of shares(j, ACROSS, columns)) {
          const at = row * columns + column;
          sums[at] = (sums[at] ?? 0) + (map[nodeOf(i, j)] ?? 0) * part * other;
        }
      }
    }
  }
  return sums;
}

function shares(i: number, of: number, parts: number): [number, number][] {
  const at = (i * parts) / of;
  const onBorder = Number.isInteger(at) && at > 0 && at < parts;
  return onBorder
    ? [
        [at - 1, 0.5],
        [at, 0.5],
      ]
    : [[Math.min(parts - 1, Math.floor(at)), 1]];
}
