import { moved } from "../engine/drawing/block.ts";
import { clipped, type Window } from "../engine/drawing/clip.ts";
import { line, words } from "../engine/drawing/marks.ts";
import { type Stretch, tiles } from "../engine/drawing/tiles.ts";
import type { At, Document, Item, Measure } from "../engine/drawing.ts";
import { HEADING } from "./looks.ts";
import { registerMarks } from "./register-marks.ts";
import type { TemplateData } from "./template-data.ts";
import { templateFigures } from "./template-figures.ts";
import { type HeadParts, headParts } from "./template-parts.ts";
import { templateRoom, templateSheets } from "./template-sheet.ts";

/** Neighbouring sheets share this much, mm. */
export const OVERLAP = 12;
/** Room about the outline for what is written on it: at the sides, above, below, mm. */
const MARGIN = { side: 4, above: 4, below: 19 };

/**
 * The wanted head at 1:1 on A4: on one sheet where it goes, else by halves or tiles that share a strip with
 * register marks. Near is left, seen from behind.
 */
export function templateOf(data: TemplateData, measure: Measure): Document {
  return laidOut(data, measure, headParts(data, measure, "whole"), (from, to, width) =>
    tiles(from, to, width, OVERLAP),
  );
}

/**
 * Lays what `columnsOf` cuts the drawing into, from `from` to `to`, mm, each on a sheet of its own (and on more than one
 * where it is too deep), with register marks in the strips that neighbours share.
 */
export function laidOut(
  data: TemplateData,
  measure: Measure,
  head: HeadParts,
  columnsOf: (from: number, to: number, width: number) => readonly Stretch[],
): Document {
  const room = templateRoom(data.facts, measure);
  const figures = templateFigures(data, room.width, measure);
  const high = room.height - figures.height - 8;
  const columns = columnsOf(head.left - MARGIN.side, head.right + MARGIN.side, room.width);
  const rows = tiles(head.top - MARGIN.above, head.bottom + MARGIN.below, high, OVERLAP);
  const sheets = rows.flatMap((row, r) =>
    columns.map((column, c): readonly Item[] => [
      ...moved(figures.items, [0, 4]),
      ...moved(seen(head.items, column, row), [-column.from, figures.height + 8 - row.from]),
      ...moved(registerMarks({ columns, rows, column: c, row: r, overlap: OVERLAP }), [
        -column.from,
        figures.height + 8 - row.from,
      ]),
      ...sideWords(
        { row: r, rows: rows.length, column: c, columns: columns.length },
        room.width,
        figures.height + 8,
      ),
    ]),
  );
  return templateSheets(data.facts, sheets, measure);
}

/** What one sheet shows: lines cut at its edge, words and closed marks that stand on it whole. */
function seen(items: readonly Item[], column: Stretch, row: Stretch): readonly Item[] {
  const window: Window = { left: column.from, right: column.to, top: row.from, bottom: row.to };
  const holds = ([x, y]: At) =>
    x >= window.left && x <= window.right && y >= window.top && y <= window.bottom;
  return items.flatMap((item): readonly Item[] => {
    if (item.kind === "text") return holds(item.at) ? [item] : [];
    if (item.kind === "band") return [];
    if (item.closed) return item.points.every(holds) ? [item] : [];
    return clipped(item.points, window).map((points) =>
      line(item.name, item.pen, points, { dashed: item.dashed }),
    );
  });
}

/** Which side is which, in words at both ends, and which of several sheets of one head this is. */
function sideWords({ row, rows, column, columns }: Place, width: number, y: number): readonly Item[] {
  const near = words("near, words", HEADING, [0, y + 2], "near side (left)");
  const off = words("off, words", HEADING, [width, y + 2], "off side (right)", { anchor: "end" });
  const count = rows * columns;
  const sheet = row * columns + column + 1;
  const part = count === 2 && columns === 2 ? (column === 0 ? "near half, " : "off half, ") : "";
  const said = `${part}sheet ${sheet} of ${count}`;
  const which =
    count === 1 ? [] : [words("which sheet", HEADING, [width / 2, y + 2], said, { anchor: "middle" })];
  if (columns === 1) return [near, off, ...which];
  return [column < columns / 2 ? near : off, ...which];
}

interface Place {
  readonly row: number;
  readonly rows: number;
  readonly column: number;
  readonly columns: number;
}
