import type { At, Item } from "../drawing.ts";
import { HATCH_PITCH, hatch } from "./hatch.ts";

/** Dash and gap of a dashed line, mm. */
export const DASH = [3, 1.5] as const;

/** The thin lines that fill an item, both ways where it is crossed; none for items without. */
export function fineLines(item: Item): readonly (readonly [At, At])[] {
  if (item.kind === "line" && item.fill === "hatch") return hatch([item.points], HATCH_PITCH, "rising");
  if (item.kind === "band" && item.tint === "crossed") {
    const pitch = HATCH_PITCH / 2;
    return [...hatch(item.rings, pitch, "rising"), ...hatch(item.rings, pitch, "falling")];
  }
  return [];
}
