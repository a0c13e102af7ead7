import { type Block, moved } from "../engine/drawing/block.ts";
import { words } from "../engine/drawing/marks.ts";
import type { Item, Measure } from "../engine/drawing.ts";
import { printed, printedAlone } from "./figures.ts";
import { fitted } from "./fitted.ts";
import { FIGURE, HEADING, SMALL } from "./looks.ts";
import { outcomeMark } from "./outcome-mark.ts";
import type { InsideRow } from "./sheet-data.ts";

const GUTTER = 6;
const NAME_WIDE = 38;
const ROW = 3.6;
const MARK_WIDE = 10;

/** What is inside today and after the change, two to a row, read down the left column first. */
export function insideLimits(rows: readonly InsideRow[], width: number, measure: Measure): readonly Block[] {
  if (rows.length === 0) return [];
  const wide = (width - GUTTER) / 2;
  const half = Math.ceil(rows.length / 2);
  const lines = rows.slice(0, half).map((row, i): Block => {
    const other = rows[half + i];
    return {
      items: [
        ...insideRow(row, wide, measure),
        ...(other ? moved(insideRow(other, wide, measure), [wide + GUTTER, 0]) : []),
      ],
      height: ROW,
    };
  });
  const [first, ...rest] = lines;
  const heading = words("inside, heading", HEADING, [0, 4.6], "Inside, today and after any change");
  const key = words(
    "inside, key",
    SMALL,
    [width, 4.6],
    "as read today; two figures: near / off; three: front / mid / rear",
    { anchor: "end" },
  );
  return first ? [{ items: [heading, key, ...moved(first.items, [0, 6])], height: ROW + 6 }, ...rest] : [];
}

function insideRow(row: InsideRow, width: number, measure: Measure): readonly Item[] {
  const name = fitted("inside, name", row.name, SMALL, NAME_WIDE, SMALL.leading, measure);
  return [
    ...name.items,
    words("inside, figure", { ...FIGURE, size: 2.2 }, [width - MARK_WIDE - 2, 2.6], insideFigures(row), {
      anchor: "end",
    }),
    ...moved(outcomeMark("inside"), [width - MARK_WIDE, 0.1]),
  ];
}

/** One figure, or several with the largest doubt of them. */
function insideFigures({ figures, unit }: InsideRow): string {
  const doubts = figures.flatMap(({ u }) => u ?? []);
  const u = doubts.length < figures.length ? undefined : Math.max(...doubts);
  const bare = figures.slice(0, -1).map(({ value }) => printedAlone({ value, u }));
  const last = figures.at(-1);
  return [...bare, printed(last && { value: last.value, u }, unit)].join(" / ");
}
