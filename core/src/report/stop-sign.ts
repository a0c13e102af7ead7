import { type Block, EMPTY, moved, stacked } from "../engine/drawing/block.ts";
import { box } from "../engine/drawing/marks.ts";
import { type Look, paragraph } from "../engine/drawing/paragraph.ts";
import type { Measure } from "../engine/drawing.ts";

const LOOK: Look = { face: "text", bold: true, size: 4.6, leading: 6, figures: false };

/** Black field with white words; stands before everything else on its sheet. Empty when there is no stop. */
export function stopSign(
  stops: readonly string[],
  width: number,
  measure: Measure,
  face: Look["face"] = "text",
): Block {
  if (stops.length === 0) return EMPTY;
  const said = stacked(
    stops.map((stop) => paragraph("stop", stop, { ...LOOK, face }, width - 12, measure)),
    1,
  );
  const white = said.items.map((item) => (item.kind === "text" ? { ...item, ink: "paper" as const } : item));
  const height = said.height + 5;
  return {
    items: [box("stop, field", "thin", [0, 0], width, height, "ink"), ...moved(white, [6, 3])],
    height,
  };
}
