import { abreast, type Block, dealt, moved, stacked } from "../engine/drawing/block.ts";
import type { Document, Measure } from "../engine/drawing.ts";
import { answers, stillToRead } from "./sheet-answers.ts";
import type { SheetData } from "./sheet-data.ts";
import { follows } from "./sheet-follows.ts";
import { framed, roomWithin } from "./sheet-frame.ts";
import { limitRows } from "./sheet-limits.ts";
import { pressureMaps } from "./sheet-pressure.ts";
import { sections } from "./sheet-sections.ts";

/** Where the maps leave off and what follows begins, mm. */
const FOLLOWS_LEFT = 134;
/** Before a part that is no row of a table, mm. */
const PART_GAP = 5;

/** The fitter's working sheet: the answers first, then every limit, then the drawings. A long table runs on. */
export function sheetOf(data: SheetData, measure: Measure): Document {
  const { width, height } = roomWithin(data.facts, measure);
  const maps = pressureMaps(data.pressure, data.pressureLimitKPa);
  const left = maps.height === 0 ? 0 : FOLLOWS_LEFT;
  const parts: readonly Block[] = [
    ...answers(data, width, height, measure),
    below(stillToRead(data, width, measure)),
    ...limitRows(data.limits, width, measure).map((row, i) => (i === 0 ? below(row) : row)),
    below(sections(data.sections, measure)),
    below(
      abreast([
        { x: 0, block: maps },
        { x: left, block: follows(data.follows, maps.height === 0 ? 60 : width - left, measure) },
      ]),
    ),
  ];
  const pages = dealt(parts, height, 0).map((blocks) => stacked(blocks).items);
  return framed("Working sheet", data.facts, pages, measure);
}

function below(block: Block): Block {
  return block.height === 0
    ? block
    : { items: moved(block.items, [0, PART_GAP]), height: block.height + PART_GAP };
}
