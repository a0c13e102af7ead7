import { type Block, moved, stacked } from "../engine/drawing/block.ts";
import { line, words } from "../engine/drawing/marks.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { Item, Measure } from "../engine/drawing.ts";
import { printed } from "./figures.ts";
import { FIGURE, HEADING, SMALL } from "./looks.ts";
import { OUTCOME_WORDS, outcomeMark } from "./outcome-mark.ts";
import type { Judged, LimitRow, SheetLimits } from "./sheet-data.ts";
import { insideLimits } from "./sheet-inside.ts";

/** Where the columns start, mm: rule, today, after the change. */
const COLUMNS = { rule: 0, today: 73, after: 123 } as const;
const MARK = 25;
const WORD = 37;
const LEAST = 4.6;

/** The limits row by row, so that they can run on to the next sheet: first what is not inside, then what is, then what was not read. */
export function limitRows(limits: SheetLimits, width: number, measure: Measure): readonly Block[] {
  const withAfter = limits.open.some((row) => row.after !== undefined);
  const open = limits.open.map((row) => limitRow(row, width, measure));
  return [
    ...headed(tableHead(withAfter), open),
    ...insideLimits(limits.inside, width, measure),
    ...notRead(limits, width, measure),
  ];
}

/** A table's head goes with its first row. */
function headed(head: Block, rows: readonly Block[]): readonly Block[] {
  const [first, ...rest] = rows;
  return first ? [stacked([head, first]), ...rest] : [];
}

function notRead(
  { notRead: names, notReadCount }: SheetLimits,
  width: number,
  measure: Measure,
): readonly Block[] {
  if (names.length === 0) return [];
  const many = notReadCount === 1 ? "1 limit was" : `${notReadCount} limits were`;
  const said = paragraph("limits, not read", `${many} not read: ${names.join("; ")}.`, SMALL, width, measure);
  return [{ items: moved(said.items, [0, 1.5]), height: said.height + 1.5 }];
}

function tableHead(withAfter: boolean): Block {
  return {
    items: [
      words("limits, heading", HEADING, [COLUMNS.rule, 4], "Limits not inside"),
      words("limits, today", HEADING, [COLUMNS.today, 4], "Today"),
      ...(withAfter ? [words("limits, after", HEADING, [COLUMNS.after, 4], "After the change")] : []),
    ],
    height: 6,
  };
}

function limitRow(row: LimitRow, width: number, measure: Measure): Block {
  const rule = paragraph("limit, rule", row.rule, SMALL, COLUMNS.today - 4, measure);
  const height = Math.max(LEAST, rule.height + 1);
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
