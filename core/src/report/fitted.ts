import type { Block } from "../engine/drawing/block.ts";
import { type Look, paragraph } from "../engine/drawing/paragraph.ts";
import type { Measure } from "../engine/drawing.ts";

const SMALLEST = 1.9;

/**
 * Words made smaller till they go into a box, mm. What does not go in even at the smallest size is cut with a mark
 * that says so: only names come here, which stand whole in the case.
 */
export function fitted(
  name: string,
  said: string,
  look: Look,
  width: number,
  height: number,
  measure: Measure,
): Block {
  for (let size = look.size; size >= SMALLEST; size -= 0.3) {
    const block = paragraph(name, said, { ...look, size, leading: size * 1.25 }, width, measure);
    if (block.height <= height) return block;
  }
  const shorter = said.slice(0, Math.floor((said.length * 3) / 4)).replace(/ ?…?$/, "…");
  return said.length < 4 ? { items: [], height: 0 } : fitted(name, shorter, look, width, height, measure);
}
