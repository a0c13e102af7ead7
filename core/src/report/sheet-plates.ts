import { type Block, stacked } from "../engine/drawing/block.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { Measure } from "../engine/drawing.ts";
import { HEADING, SMALL } from "./looks.ts";

/** One plate in words; worked out and worded elsewhere. */
export interface PlateRow {
  readonly name: string;
  /** The head it makes as fitted, with its doubt. */
  readonly makes: string;
  /** Its place among the others, or why it does not come in question. */
  readonly says: string;
}

/** Rows and what must be known to read them; no rows where the head takes no plates. */
export interface SheetPlates {
  readonly rows: readonly PlateRow[];
  readonly note: string;
}

/** The plates for this saddle in their order, each in one paragraph, so that a long list runs on over pages. */
export function plates({ rows, note }: SheetPlates, width: number, measure: Measure): readonly Block[] {
  if (rows.length === 0) return [];
  const heading = stacked([
    paragraph("plates, heading", "Plates, nearest to the wanted head first", HEADING, width, measure),
    paragraph("plates, note", note, SMALL, width, measure),
  ]);
  const set = rows.map(({ name, makes, says }, i) =>
    paragraph("plate", `${i + 1}. ${name}: ${makes}; ${says}.`, SMALL, width, measure),
  );
  const [first, ...rest] = set;
  return first ? [stacked([heading, first], 0.6), ...rest] : [];
}
