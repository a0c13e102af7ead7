import { type Block, stacked } from "../engine/drawing/block.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { Measure } from "../engine/drawing.ts";
import { HEADING, SMALL } from "./looks.ts";
import type { SheetData } from "./sheet-data.ts";

const FINE = { ...SMALL, size: 2.4, leading: 3.2 };

/** The horse by its numbers and what it carries; whether the saddle comes to rest in the calculation, and what that stands on. */
export function restWords(
  { known, panel, rest }: Pick<SheetData, "known" | "panel" | "rest">,
  width: number,
  measure: Measure,
): Block {
  const assumed =
    rest.assumed.length === 0 ? "" : `Assumed, and drawn within its range: ${rest.assumed.join("; ")}.`;
  return stacked(
    [
      paragraph("horse", [...known, ...wedgesAlone(panel)].join(" "), FINE, width, measure),
      paragraph("rest, heading", "At rest, in the calculation", HEADING, width, measure),
      paragraph("rest", rest.says.join(" "), SMALL, width, measure),
      paragraph("rest, assumed", assumed, FINE, width, measure),
      paragraph("rest, made", rest.made, FINE, width, measure),
    ],
    0.6,
  );
}

/** Wedges stand in the panel's own part where there is work on it. */
const wedgesAlone = (panel: SheetData["panel"]): readonly string[] =>
  panel === undefined || panel.says.length > 0 ? [] : panel.wedges;
