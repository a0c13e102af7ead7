import { box, line } from "../engine/drawing/marks.ts";
import type { Item } from "../engine/drawing.ts";
import type { Judged } from "./sheet-data.ts";

export const OUTCOME_WORDS: { readonly [O in Judged["outcome"]]: string } = {
  inside: "inside",
  between: "between",
  outside: "outside",
  "cannot-tell": "cannot tell",
  "not-read": "not read",
};

/**
 * State by shape, without colour: two brackets are the limits, a bar is the value. Inside: whole bar within; between:
 * it touches a bracket; outside: it lies across; cannot tell: open dashed bar; not read: empty box with a diagonal.
 * Ten mm wide, 3 high.
 */
export function outcomeMark(outcome: Judged["outcome"]): readonly Item[] {
  const name = `mark: ${OUTCOME_WORDS[outcome]}`;
  if (outcome === "not-read") {
    return [
      box(name, "thin", [2, 0], 6, 3),
      line(name, "thin", [
        [2, 3],
        [8, 0],
      ]),
    ];
  }
  const bar: { readonly [O in typeof outcome]: readonly Item[] } = {
    inside: [
      line(name, "heavy", [
        [3, 1.5],
        [6, 1.5],
      ]),
    ],
    between: [
      line(name, "heavy", [
        [5, 1.5],
        [8, 1.5],
      ]),
    ],
    outside: [
      line(name, "heavy", [
        [6, 1.5],
        [11, 1.5],
      ]),
    ],
    "cannot-tell": openBar(name),
  };
  return [bracket(name, 1, 1), bracket(name, 8, -1), ...bar[outcome]];
}

function bracket(name: string, x: number, way: number): Item {
  return line(name, "thin", [
    [x + way, 0],
    [x, 0],
    [x, 3],
    [x + way, 3],
  ]);
}

/** Short strokes of its own: the long dash of other lines would not show on so small a bar. */
function openBar(name: string): readonly Item[] {
  return [2.4, 4, 5.6].flatMap((x) => [
    line(name, "thin", [
      [x, 0.9],
      [x + 1, 0.9],
    ]),
    line(name, "thin", [
      [x, 2.1],
      [x + 1, 2.1],
    ]),
  ]);
}
