import { type Block, dealt, moved, stacked } from "../engine/drawing/block.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { Document, Measure } from "../engine/drawing.ts";
import { SMALL } from "./looks.ts";
import { scaledBar } from "./scale-bars.ts";
import type { SheetData } from "./sheet-data.ts";
import { framed, roomWithin } from "./sheet-frame.ts";
import { section, sectionsKey } from "./sheet-sections.ts";

/** Of the scales of ISO 5455 the largest at which a back goes on A4 from girth line to girth line (from memory). */
const SCALE = 2;
/** Room for the front with its head, and for a station without, mm. */
const HIGH = { front: 128, mid: 84, rear: 84 } as const;
const GAP = 4;
/** Room for the bar with its words, mm. */
const BAR_HIGH = 14;

/** Before and after at each station at 1 : 2, today's dashed under what the chosen setting makes; a bar on every sheet. */
export function sectionSheetsOf(
  { facts, sections }: Pick<SheetData, "facts" | "sections">,
  measure: Measure,
): Document {
  const room = roomWithin(facts, measure);
  const { width } = room;
  const key = paragraph(
    "sections, key",
    `Seen from behind; ${sectionsKey(sections)}.`,
    SMALL,
    width,
    measure,
  );
  const drawn = sections.map((one): Block => {
    const height = HIGH[one.station];
    return {
      items: moved(section(one, { scale: SCALE, width, height }, measure), [0, 0]),
      height: height + GAP,
    };
  });
  const pages = dealt(drawn, room.height - BAR_HIGH - key.height - GAP, 0).map((blocks) => [
    ...key.items,
    ...moved(stacked(blocks).items, [0, key.height + GAP]),
    ...scaledBar([0, room.height - 4], SCALE),
  ]);
  return framed("Sections before and after", facts, pages, measure);
}
