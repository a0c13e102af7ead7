import { type Block, EMPTY, stacked } from "../engine/drawing/block.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { Measure } from "../engine/drawing.ts";
import { FINE, HEADING, SMALL } from "./looks.ts";

/** The press in sentences: what it takes, where to look, and what that stands on. */
export interface PressSheet {
  readonly says: readonly string[];
  readonly look: readonly string[];
  /** One quantity each, read or with its range and source. */
  readonly assumed: readonly string[];
}

/** The bench's part of the sheet; empty where nothing is pressed. */
export function pressPart(press: PressSheet | undefined, width: number, measure: Measure): Block {
  if (press === undefined) return EMPTY;
  const look = press.look.length === 0 ? "" : `Look and feel after each pass: ${press.look.join("; ")}.`;
  return stacked(
    [
      paragraph("press, heading", "At the press", HEADING, width, measure),
      paragraph("press", press.says.join(" "), SMALL, width, measure),
      paragraph("press, look", look, SMALL, width, measure),
      paragraph("press, assumed", `Stands on: ${press.assumed.join("; ")}.`, FINE, width, measure),
    ],
    0.6,
  );
}
