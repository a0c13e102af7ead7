import type { At, Item } from "../drawing.ts";

/** Items laid out from (0, 0) downward, and the room they take. */
export interface Block {
  readonly items: readonly Item[];
  readonly height: number;
}

export const EMPTY: Block = { items: [], height: 0 };

export function moved(items: readonly Item[], [dx, dy]: At): readonly Item[] {
  const shift = ([x, y]: At): At => [x + dx, y + dy];
  return items.map((item) => {
    if (item.kind === "text") return { ...item, at: shift(item.at) };
    if (item.kind === "line") return { ...item, points: item.points.map(shift) };
    return { ...item, rings: item.rings.map((ring) => ring.map(shift)) };
  });
}

/** One under the other; empty blocks take no gap. */
export function stacked(blocks: readonly Block[], gap = 0): Block {
  const full = blocks.filter((block) => block.height > 0);
  let height = 0;
  const items = full.flatMap((block, i) => {
    height += i === 0 ? 0 : gap;
    const here = moved(block.items, [0, height]);
    height += block.height;
    return here;
  });
  return { items, height };
}

/** Side by side from the top, each at its own x. */
export function abreast(columns: readonly { readonly x: number; readonly block: Block }[]): Block {
  return {
    items: columns.flatMap(({ x, block }) => moved(block.items, [x, 0])),
    height: columns.reduce((most, { block }) => Math.max(most, block.height), 0),
  };
}

/** A block that no page holds: set on one, it would run over the edge. */
export class BlockTooHigh extends Error {
  constructor(height: number, page: number) {
    super(`a part of ${height.toFixed(0)} mm does not go on a page with room for ${page.toFixed(0)} mm`);
    this.name = "BlockTooHigh";
  }
}

/** Blocks dealt onto pages of one height, in order, none parted. Throws BlockTooHigh. */
export function dealt(blocks: readonly Block[], height: number, gap: number): readonly (readonly Block[])[] {
  const pages: Block[][] = [];
  let left = 0;
  for (const block of blocks.filter((one) => one.height > 0)) {
    if (block.height > height) throw new BlockTooHigh(block.height, height);
    const page = pages.at(-1);
    if (page && block.height + gap <= left) {
      page.push(block);
      left -= block.height + gap;
    } else {
      pages.push([block]);
      left = height - block.height;
    }
  }
  return pages;
}
