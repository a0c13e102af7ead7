import { line, words } from "../engine/drawing/marks.ts";
import type { Stretch } from "../engine/drawing/tiles.ts";
import type { At, Item } from "../engine/drawing.ts";
import { SMALL } from "./looks.ts";

interface Place {
  readonly columns: readonly Stretch[];
  readonly rows: readonly Stretch[];
  readonly column: number;
  readonly row: number;
  readonly overlap: number;
}

const ARM = 4;

/** Crosses in the shared strips, in the drawing's own places: laid over each other they join the sheets. */
export function registerMarks({ columns, rows, column, row, overlap }: Place): readonly Item[] {
  const here = { x: columns[column], y: rows[row] };
  if (!here.x || !here.y) return [];
  const inset = 12;
  const [left, right, top, bottom] = [here.x.from, here.x.to, here.y.from, here.y.to];
  const marks: Item[] = [];
  if (column > 0)
    marks.push(
      ...pair(`${row + 1}.${column}`, [
        [left + overlap / 2, top + inset],
        [left + overlap / 2, bottom - inset],
      ]),
    );
  if (column + 1 < columns.length) {
    marks.push(
      ...pair(`${row + 1}.${column + 1}`, [
        [right - overlap / 2, top + inset],
        [right - overlap / 2, bottom - inset],
      ]),
    );
  }
  if (row > 0)
    marks.push(
      ...pair(`${row} to ${row + 1}`, [
        [left + inset, top + overlap / 2],
        [right - inset, top + overlap / 2],
      ]),
    );
  if (row + 1 < rows.length) {
    marks.push(
      ...pair(`${row + 1} to ${row + 2}`, [
        [left + inset, bottom - overlap / 2],
        [right - inset, bottom - overlap / 2],
      ]),
    );
  }
  return marks;
}

function pair(name: string, at: readonly [At, At]): readonly Item[] {
  return at.flatMap(([x, y], i) => [
    line("register mark", "thin", [
      [x - ARM, y],
      [x + ARM, y],
    ]),
    line("register mark", "thin", [
      [x, y - ARM],
      [x, y + ARM],
    ]),
    line("register mark", "thin", diamond(x, y), { closed: true }),
    words("register mark, name", SMALL, [x + 2.2, y - 2.2], `${name}${i === 0 ? "a" : "b"}`),
  ]);
}

function diamond(x: number, y: number): readonly At[] {
  return [
    [x - 1.5, y],
    [x, y - 1.5],
    [x + 1.5, y],
    [x, y + 1.5],
  ];
}
