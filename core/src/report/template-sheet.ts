import { moved } from "../engine/drawing/block.ts";
import type { At, Document, Item, Measure } from "../engine/drawing.ts";
import { levelBars, SCALE_BARS_HIGH, uprightBar } from "./scale-bars.ts";
import type { SheetFacts } from "./sheet-facts.ts";
import { FRAME, framed, type Room, roomWithin } from "./sheet-frame.ts";

/** The upright bar stands in the margin for filing, where no drawing comes. */
const UPRIGHT_BAR: At = [FRAME.left - 7, 110];

/** The room for a drawing at 1:1, above the scale bars. */
export function templateRoom(facts: SheetFacts, measure: Measure): Room {
  const room = roomWithin(facts, measure);
  return { ...room, height: room.height - SCALE_BARS_HIGH };
}

/** The only way to a sheet at 1:1: the bars are laid by it, so that there is none without them. */
export function templateSheets(
  facts: SheetFacts,
  drawings: readonly (readonly Item[])[],
  measure: Measure,
): Document {
  const room = templateRoom(facts, measure);
  const upright = moved(uprightBar(UPRIGHT_BAR), [-room.at[0], -room.at[1]]);
  const barred = drawings.map((items) => [
    ...items,
    ...levelBars([0, room.height], room.width, measure),
    ...upright,
  ]);
  return framed("Template of the wanted head, 1 : 1", facts, barred, measure);
}
