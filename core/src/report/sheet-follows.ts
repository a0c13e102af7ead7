import { type Block, EMPTY, stacked } from "../engine/drawing/block.ts";
import { words } from "../engine/drawing/marks.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { Measure } from "../engine/drawing.ts";
import { printed } from "./figures.ts";
import { FIGURE, HEADING, SMALL } from "./looks.ts";
import type { Following } from "./sheet-data.ts";

/** What follows from the change: each quantity with today's figure over the one to come. */
export function follows(all: readonly Following[], width: number, measure: Measure): Block {
  if (all.length === 0) return EMPTY;
  const heading = paragraph("follows, heading", "What follows", HEADING, width, measure);
  return stacked([heading, ...all.map((one) => following(one, width, measure))], 2);
}

function following(one: Following, width: number, measure: Measure): Block {
  const what = paragraph("follows, what", one.what, SMALL, width, measure);
  const figure = { ...FIGURE, size: 2.4 };
  const rows = [
    ["today", one.today],
    ["after", one.after],
  ] as const;
  const items = rows.flatMap(([when, value], i) => {
    const base = what.height + 3 + i * 3.8;
    return [
      words(`follows, ${when}`, SMALL, [0, base], when),
      words(`follows, ${when}, figure`, figure, [width, base], printed(value, one.unit), { anchor: "end" }),
    ];
  });
  return { items: [...what.items, ...items], height: what.height + 8 };
}
