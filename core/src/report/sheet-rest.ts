import { type Block, EMPTY, stacked } from "../engine/drawing/block.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { Measure } from "../engine/drawing.ts";
import { FINE, HEADING, SMALL } from "./looks.ts";
import type { SheetData } from "./sheet-data.ts";

/** The horse by its numbers and what it carries; whether the saddle comes to rest in the calculation, and what that stands on. */
export function restWords(
  { known, panel, rest }: Pick<SheetData, "known" | "panel" | "rest">,
  width: number,
  measure: Measure,
): Block {
  const behind =
    rest.assumed.length === 0 ? "" : "What was assumed, with its ranges, stands on the calculation sheet. ";
  return stacked(
    [
      paragraph("horse", [...known, ...wedgesAlone(panel)].join(" "), FINE, width, measure),
      paragraph("rest, heading", "At rest, in the calculation", HEADING, width, measure),
      paragraph("rest", rest.says.join(" "), SMALL, width, measure),
      paragraph("rest, made", `${behind}${rest.made}`, FINE, width, measure),
    ],
    0.6,
  );
}

/** What the rest stands on, each with its range; on the sheet behind. */
export function restAssumed({ rest }: Pick<SheetData, "rest">, width: number, measure: Measure): Block {
  if (rest.assumed.length === 0) return EMPTY;
  const says = `Assumed of the saddle at rest, and drawn within its range: ${rest.assumed.join("; ")}.`;
  return paragraph("rest, assumed", says, FINE, width, measure);
}

/** Wedges stand in the panel's own part where there is work on it. */
const wedgesAlone = (panel: SheetData["panel"]): readonly string[] =>
  panel === undefined || panel.says.length > 0 ? [] : panel.wedges;
