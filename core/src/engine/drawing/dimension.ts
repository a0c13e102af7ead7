import type { At, Item, Measure } from "../drawing.ts";
import { line, type Type, words } from "./marks.ts";

/** Arrow of a dimension line, length and half-width, mm (filled, about 15 degrees in all; ISO 129-1, from memory). */
const ARROW = 3;
const ARROW_HALF = 0.42;
/** Helper lines pass the dimension line by this much, mm. */
const PAST = 2;

/** A filled arrow head whose tip is at `at`, pointing along (dx, dy), a unit vector. */
function arrow(name: string, at: At, [dx, dy]: At): Item {
  const [bx, by] = [at[0] - dx * ARROW, at[1] - dy * ARROW];
  const points: At[] = [
    at,
    [bx - dy * ARROW_HALF, by + dx * ARROW_HALF],
    [bx + dy * ARROW_HALF, by - dx * ARROW_HALF],
  ];
  return line(name, "thin", points, { closed: true, fill: "ink" });
}

/** A level dimension line at height y between two points, helper lines down to it, the figure over it at a share of its length. */
export function levelDimension(
  name: string,
  from: At,
  to: At,
  y: number,
  figure: string,
  type: Type,
  measure: Measure,
  share = 0.5,
): readonly Item[] {
  const way = Math.sign(y - from[1]) || 1;
  const middle = from[0] + (to[0] - from[0]) * share;
  const wide = measure(figure, type.face, type.bold, type.size);
  const helpers = [from, to].map(([x, top]) =>
    line(`${name}, helper`, "thin", [
      [x, top + way],
      [x, y + way * PAST],
    ]),
  );
  const over = Math.abs(to[0] - from[0]) < wide + 2 * ARROW;
  return [
    ...helpers,
    line(name, "thin", [
      [from[0], y],
      [to[0], y],
    ]),
    arrow(`${name}, arrow`, [from[0], y], [-1, 0]),
    arrow(`${name}, arrow`, [to[0], y], [1, 0]),
    words(`${name}, figure`, type, over ? [to[0] + 2, y + type.size * 0.35] : [middle, y - 1.2], figure, {
      anchor: over ? "start" : "middle",
    }),
  ];
}

/** An upright dimension line at x; the figure reads from the right side of the sheet, turned along the line. */
export function uprightDimension(
  name: string,
  from: At,
  to: At,
  x: number,
  figure: string,
  type: Type,
): readonly Item[] {
  const way = Math.sign(x - from[0]) || 1;
  const helpers = [from, to].map(([left, y]) =>
    line(`${name}, helper`, "thin", [
      [left + way, y],
      [x + way * PAST, y],
    ]),
  );
  return [
    ...helpers,
    line(name, "thin", [
      [x, from[1]],
      [x, to[1]],
    ]),
    arrow(`${name}, arrow`, [x, from[1]], [0, Math.sign(from[1] - to[1])]),
    arrow(`${name}, arrow`, [x, to[1]], [0, Math.sign(to[1] - from[1])]),
    words(`${name}, figure`, type, [x - 1.2, (from[1] + to[1]) / 2], figure, { anchor: "middle", turn: -90 }),
  ];
}
