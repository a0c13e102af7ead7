import { type Block, EMPTY, stacked } from "../engine/drawing/block.ts";
import { words } from "../engine/drawing/marks.ts";
import type { Measure } from "../engine/drawing.ts";
import { printed } from "./figures.ts";
import { fitted } from "./fitted.ts";
import { FIGURE, HEADING, SMALL } from "./looks.ts";
import type { Following } from "./sheet-data.ts";

/** Where the figures of today end, as part of the width; those of after end at its end. */
const TODAY = 0.7;
const ROW = 3.5;

/** What follows from the change: each quantity with today's figure and the one to come. */
export function follows(all: readonly Following[], width: number, measure: Measure): Block {
  if (all.length === 0) return EMPTY;
  const head: Block = {
    items: [
      words("follows, heading", HEADING, [0, 3], "What follows"),
      words("follows, today", SMALL, [width * TODAY, 3], "today", { anchor: "end" }),
      words("follows, after", SMALL, [width, 3], "after", { anchor: "end" }),
    ],
    height: 4.6,
  };
  return stacked([head, ...all.map((one) => following(one, width, measure))]);
}

function following({ what, unit, today, after }: Following, width: number, measure: Measure): Block {
  const figure = { ...FIGURE, size: 2.3 };
  const name = fitted("follows, what", what, SMALL, width * TODAY - 32, ROW, measure);
  return {
    items: [
      ...name.items,
      words("follows, today, figure", figure, [width * TODAY, 2.6], printed(today, unit), { anchor: "end" }),
      words("follows, after, figure", figure, [width, 2.6], printed(after, unit), { anchor: "end" }),
    ],
    height: ROW,
  };
}
