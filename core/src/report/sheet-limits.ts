import { type Block, moved } from "../engine/drawing/block.ts";
import { line, words } from "../engine/drawing/marks.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { Item, Measure } from "../engine/drawing.ts";
import { printed } from "./figures.ts";
import { FIGURE, HEADING, SMALL } from "./looks.ts";
import { OUTCOME_WORDS, outcomeMark } from "./outcome-mark.ts";
import type { Judged, LimitRow } from "./sheet-data.ts";

/** Where the columns start, mm: rule, today, after the change. */
const COLUMNS = { rule: 0, today: 62, after: 119 } as const;
const MARK = 25;
const WORD = 38;
const LEAST = 5;

/** The table of limits row by row, so that it can run on to the next sheet; its head goes with the first row. */
export function limitRows(rows: readonly LimitRow[], width: number, measure: Measure): readonly Block[] {
  const [first, ...rest] = rows.map((row) => limitRow(row, width, measure));
  if (!first) return [];
  const head = tableHead(rows.some((row) => row.after !== undefined));
  return [
    { items: [...head.items, ...moved(first.items, [0, head.height])], height: head.height + first.height },
    ...rest,
  ];
}

function tableHead(withAfter: boolean): Block {
  return {
    items: [
      words("limits, heading", HEADING, [COLUMNS.rule, 4], "Limits"),
      words("limits, today", HEADING, [COLUMNS.today, 4], "Today"),
      ...(withAfter ? [words("limits, after", HEADING, [COLUMNS.after, 4], "After the change")] : []),
    ],
    height: 6,
  };
}

function limitRow(row: LimitRow, width: number, measure: Measure): Block {
  const rule = paragraph("limit, rule", row.rule, SMALL, COLUMNS.today - 4, measure);
  const height = Math.max(LEAST, rule.height + 1.4);
  return {
    items: [
      line("limit, rule line", "thin", [
        [0, 0],
        [width, 0],
      ]),
      ...moved(rule.items, [COLUMNS.rule, 0.9]),
      ...moved(judged(row.today, row), [COLUMNS.today, 0.9]),
      ...(row.after ? moved(judged(row.after, row), [COLUMNS.after, 0.9]) : []),
    ],
    height,
  };
}

function judged(one: Judged, row: LimitRow): readonly Item[] {
  const base = 2.6;
  return [
    words(
      "limit, figure",
      { ...FIGURE, size: 2.4 },
      [MARK - 2, base],
      one.figure ? printed(one.figure, row.unit) : "",
      { anchor: "end" },
    ),
    ...moved(outcomeMark(one.outcome), [MARK, 0.1]),
    words(
      "limit, outcome",
      { ...SMALL, bold: one.outcome === "outside" },
      [WORD, base],
      OUTCOME_WORDS[one.outcome],
    ),
  ];
}
