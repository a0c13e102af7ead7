import { dealt, stacked } from "../engine/drawing/block.ts";
import type { Document, Measure } from "../engine/drawing.ts";
import { lowered } from "./sheet.ts";
import type { SheetData } from "./sheet-data.ts";
import { framed, roomWithin } from "./sheet-frame.ts";
import { gaitParts } from "./sheet-gaits.ts";
import { pressPart } from "./sheet-press.ts";
import { restAssumed } from "./sheet-rest.ts";
import { wholeTreePart } from "./sheet-whole-tree.ts";

/**
 * What stands behind the working sheet, for the bench and for whoever asks: the whole tree that the setting makes, what
 * a press does to the head, the saddle ridden, each with what was assumed. Undefined where none of it was worked out.
 */
export function calculationSheetOf(data: SheetData, measure: Measure): Document | undefined {
  const { width, height } = roomWithin(data.facts, measure);
  const parts = [
    ...lowered([pressPart(data.press, width, measure)]),
    ...lowered([wholeTreePart(data.wholeTree, width, measure)]),
    ...lowered(gaitParts(data.gaits, width, measure)),
    restAssumed(data, width, measure),
  ];
  if (parts.every((part) => part.height === 0)) return undefined;
  const pages = dealt(parts, height, 0).map((blocks) => stacked(blocks).items);
  return framed("Calculation sheet", data.facts, pages, measure);
}
