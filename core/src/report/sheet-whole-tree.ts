import { type Block, EMPTY, moved, stacked } from "../engine/drawing/block.ts";
import { words } from "../engine/drawing/marks.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { Measure } from "../engine/drawing.ts";
import { fitted } from "./fitted.ts";
import { FIGURE, FINE, HEADING, SMALL } from "./looks.ts";

/** The whole tree that a setting makes: each figure with its range, what is to be said of it, and what it stands on. */
export interface WholeTreeSheet {
  readonly rows: readonly { readonly what: string; readonly value: string }[];
  readonly says: readonly string[];
  /** One quantity each, read or with its range and source. */
  readonly assumed: readonly string[];
}
const ROW = 3.5;
/** Room for a figure with its range, mm. */
const FIGURE_WIDE = 48;
/** Rows stand in two columns with this between them, mm. */
const GUTTER = 6;

/** Empty where nothing is changed. */
export function wholeTreePart(tree: WholeTreeSheet | undefined, width: number, measure: Measure): Block {
  if (tree === undefined) return EMPTY;
  return stacked(
    [
      paragraph("tree, heading", "The whole tree, against today", HEADING, width, measure),
      rowsIn(tree.rows, width, measure),
      paragraph("tree", tree.says.join(" "), SMALL, width, measure),
      paragraph("tree, assumed", `Stands on: ${tree.assumed.join("; ")}.`, FINE, width, measure),
    ],
    0.6,
  );
}

function rowsIn(rows: WholeTreeSheet["rows"], width: number, measure: Measure): Block {
  const deep = Math.ceil(rows.length / 2);
  const wide = (width - GUTTER) / 2;
  const items = rows.flatMap(({ what, value }, i) => {
    const x = i < deep ? 0 : wide + GUTTER;
    const top = (i % deep) * ROW;
    const name = fitted("tree, what", what, SMALL, wide - FIGURE_WIDE, ROW, measure);
    const figure = words("tree, figure", { ...FIGURE, size: 2.3 }, [x + wide, top + 2.6], value, {
      anchor: "end",
    });
    return [...moved(name.items, [x, top]), figure];
  });
  return { items, height: deep * ROW };
}
