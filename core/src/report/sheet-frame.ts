import { type Block, EMPTY, moved } from "../engine/drawing/block.ts";
import { box, line, words } from "../engine/drawing/marks.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { At, Document, Item, Measure, Page } from "../engine/drawing.ts";
import { backLine } from "./back-line.ts";
import { SMALL, TITLE } from "./looks.ts";
import type { SheetFacts } from "./sheet-facts.ts";
import { stopSign } from "./stop-sign.ts";
import { TITLE_BLOCK_HIGH, titleBlock } from "./title-block.ts";

/** A4, and the frame on it: 20 mm to the left for filing, 10 elsewhere (ISO 5457, from memory). */
export const A4 = { width: 210, height: 297 } as const;
export const FRAME = { left: 20, top: 10, right: 200, bottom: 287 } as const;
const PAD = 4;
const HEAD_HIGH = 32;

/** The room that the frame leaves on a page, mm. */
export interface Room {
  readonly at: At;
  readonly width: number;
  readonly height: number;
}

export function roomWithin(facts: SheetFacts, measure: Measure): Room {
  const top = FRAME.top + HEAD_HIGH + above(facts, measure).height;
  const bottom = FRAME.bottom - TITLE_BLOCK_HIGH - below(facts, measure).height;
  return { at: [FRAME.left + PAD, top], width: FRAME.right - FRAME.left - 2 * PAD, height: bottom - top };
}

/** Sheets of one kind, each in its frame, numbered. `contents` are laid out from the room's corner. */
export function framed(
  kind: string,
  facts: SheetFacts,
  contents: readonly (readonly Item[])[],
  measure: Measure,
): Document {
  const room = roomWithin(facts, measure);
  const pages = contents.map((items, i): Page => {
    return {
      ...A4,
      items: [...frame(kind, facts, i + 1, contents.length, measure), ...moved(items, room.at)],
    };
  });
  return { title: `${kind}: ${facts.caseTitle}`, language: "en", pages };
}

function frame(
  kind: string,
  facts: SheetFacts,
  sheet: number,
  of: number,
  measure: Measure,
): readonly Item[] {
  const { left, top, right, bottom } = FRAME;
  const inner = right - left;
  const cautions = below(facts, measure);
  return [
    words("kind of sheet", TITLE, [left + PAD, top + 9.5], kind),
    ...(facts.invented ? invented() : []),
    ...backLine(facts.back, [left, top + 15], inner),
    ...moved(above(facts, measure).items, [left, top + HEAD_HIGH - 2]),
    ...moved(cautions.items, [left + PAD, bottom - TITLE_BLOCK_HIGH - cautions.height + 1.5]),
    ...titleBlock(facts, sheet, of, [left, bottom - TITLE_BLOCK_HIGH], inner, measure),
    box("frame", "medium", [left, top], inner, bottom - top),
  ];
}

/** In large type, so that no one takes an example for a horse. */
function invented(): readonly Item[] {
  return [
    words("invented", { ...TITLE, size: 9 }, [FRAME.right - PAD, FRAME.top + 10.5], "invented", {
      anchor: "end",
    }),
  ];
}

function above(facts: SheetFacts, measure: Measure): Block {
  const sign = stopSign(facts.stop, FRAME.right - FRAME.left, measure);
  return sign.height === 0 ? EMPTY : { ...sign, height: sign.height + 4 };
}

function below(facts: SheetFacts, measure: Measure): Block {
  const width = FRAME.right - FRAME.left - 2 * PAD;
  const block = paragraph("caution", facts.cautions.join(" "), SMALL, width, measure);
  if (block.height === 0) return EMPTY;
  const rule = line("cautions, rule", "thin", [
    [0, 0],
    [width, 0],
  ]);
  return { items: [rule, ...moved(block.items, [0, 2])], height: block.height + 5 };
}
