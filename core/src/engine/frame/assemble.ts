import { AXES, BLOCKS, blocksOf, COUPLE, FORCE, OTHER, OWN } from "./element.ts";
import { elementsOf, type Frame, nodesOf, PER_NODE } from "./model.ts";

/** Stiffness of a whole frame, nothing held: `band[i (width + 1) + d]` is the entry of row i, d left of the diagonal. */
export interface Stiffness {
  readonly band: Float64Array;
  readonly n: number;
  readonly width: number;
}

export function assembled(frame: Frame): Stiffness {
  const n = PER_NODE * nodesOf(frame);
  const width = widthOf(frame);
  const band = new Float64Array(n * (width + 1));
  const [axes, blocks] = [new Float64Array(AXES), new Float64Array(BLOCKS)];
  for (let e = 0; e < elementsOf(frame); e++) {
    blocksOf(frame, e, axes, blocks);
    add(band, width, blocks, PER_NODE * frame.ends[2 * e]!, PER_NODE * frame.ends[2 * e + 1]!);
  }
  return { band, n, width };
}

/** How far from the diagonal an entry lies at most. */
function widthOf({ ends }: Frame): number {
  let apart = 0;
  for (let e = 0; e < ends.length; e += 2) apart = Math.max(apart, Math.abs(ends[e]! - ends[e + 1]!));
  return PER_NODE * apart + PER_NODE - 1;
}

/** The blocks of one element put where its nodes are; only what lies on or left of the diagonal. */
function add(band: Float64Array, width: number, blocks: Float64Array, start: number, end: number): void {
  const later = end > start;
  const [high, low, sign] = later ? [end, start, 1] : [start, end, -1];
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) {
      const force = blocks[FORCE + 3 * i + j]!;
      const couple = blocks[COUPLE + 3 * i + j]!;
      const turned = blocks[COUPLE + 3 * j + i]!;
      const own = blocks[OWN + 3 * i + j]!;
      if (j <= i) {
        band[place(width, start + i, start + j)]! += force;
        band[place(width, end + i, end + j)]! += force;
        band[place(width, start + 3 + i, start + 3 + j)]! += own;
        band[place(width, end + 3 + i, end + 3 + j)]! += own;
      }
      band[place(width, start + 3 + i, start + j)]! += turned;
      band[place(width, end + 3 + i, end + j)]! -= turned;
      band[place(width, high + i, low + j)]! -= force;
      band[place(width, high + i, low + 3 + j)]! -= sign * couple;
      band[place(width, high + 3 + i, low + j)]! += sign * turned;
      band[place(width, high + 3 + i, low + 3 + j)]! += blocks[OTHER + 3 * i + j]!;
    }
  }
}

const place = (width: number, row: number, column: number): number => row * (width + 1) + row - column;
