import { type Block, stacked } from "../engine/drawing/block.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { Measure } from "../engine/drawing.ts";
import { HEADING, SMALL } from "./looks.ts";
import type { RestWords } from "./sheet-data.ts";

const FINE = { ...SMALL, size: 2.4, leading: 3.2 };

/** Whether the saddle comes to rest in the calculation, and what that stands on. */
export function restWords(rest: RestWords, width: number, measure: Measure): Block {
  const assumed =
    rest.assumed.length === 0 ? "" : `Assumed, and drawn within its range: ${rest.assumed.join("; ")}.`;
  return stacked(
    [
      paragraph("rest, heading", "At rest, in the calculation", HEADING, width, measure),
      paragraph("rest", rest.says.join(" "), SMALL, width, measure),
      paragraph("rest, assumed", assumed, FINE, width, measure),
      paragraph("rest, made", rest.made, FINE, width, measure),
    ],
    0.6,
  );
}
