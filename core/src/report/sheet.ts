import { abreast, type Block, dealt, moved, stacked } from "../engine/drawing/block.ts";
import type { Document, Measure } from "../engine/drawing.ts";
import { answers, stillToRead } from "./sheet-answers.ts";
import type { SheetData } from "./sheet-data.ts";
import { follows } from "./sheet-follows.ts";
import { framed, roomWithin } from "./sheet-frame.ts";
import { limitRows } from "./sheet-limits.ts";
import { panelPart } from "./sheet-panel.ts";
import { plates } from "./sheet-plates.ts";
import { MAP_WIDE, pressureMaps } from "./sheet-pressure.ts";
import { restWords } from "./sheet-rest.ts";
import { SECTIONS_WIDE, sections } from "./sheet-sections.ts";

/** Before a part that is no row of a table, mm. */
const PART_GAP = 3;

/** The fitter's working sheet: the answers first, then every limit, then the drawings. A long table runs on. */
export function sheetOf(data: SheetData, measure: Measure): Document {
  const { width, height } = roomWithin(data.facts, measure);
  const parts: readonly Block[] = [
    ...answers(data, width, height, measure),
    ...lowered(stillToRead(data, width, measure)),
    ...lowered([panelPart(data.panel, width, measure)]),
    ...lowered(plates(data.plates, width, measure)),
    ...lowered(limitRows(data.limits, width, measure)),
    ...lowered(drawings(data, width, height, measure)),
  ];
  const pages = dealt(parts, height, 0).map((blocks) => stacked(blocks).items);
  return framed("Working sheet", data.facts, pages, measure);
}

/** Sections, what follows and how it rests beside the pressures; parted where no page holds them so. */
function drawings(data: SheetData, width: number, height: number, measure: Measure): readonly Block[] {
  const maps = pressureMaps(data.pressure, data.pressureLimitKPa, measure);
  const left = maps.height === 0 ? width : SECTIONS_WIDE;
  const drawn = [
    sections(data.sections, measure),
    follows(data.follows, Math.min(left, SECTIONS_WIDE), measure),
  ];
  const beside = (column: readonly Block[]) =>
    abreast([
      { x: 0, block: stacked(column, PART_GAP) },
      { x: width - MAP_WIDE, block: maps },
    ]);
  const goes = (block: Block) => block.height + PART_GAP <= height;
  const all = beside([...drawn, restWords(data, left, measure)]);
  if (goes(all)) return [all];
  const below = restWords(data, width, measure);
  const most = beside(drawn);
  return (goes(most) ? [most, below] : [...drawn, maps, below]).flatMap((one) => lowered([one]));
}

/** The first block with the gap above it that sets a new part off. */
export function lowered([first, ...rest]: readonly Block[]): readonly Block[] {
  if (first === undefined || first.height === 0) return rest;
  return [{ items: moved(first.items, [0, PART_GAP]), height: first.height + PART_GAP }, ...rest];
}
