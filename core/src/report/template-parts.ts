import { levelDimension, uprightDimension } from "../engine/drawing/dimension.ts";
import { line, words } from "../engine/drawing/marks.ts";
import type { At, Item, Measure } from "../engine/drawing.ts";
import { SIDES } from "../terms/places.ts";
import { printed } from "./figures.ts";
import { FIGURE, SMALL, TEXT } from "./looks.ts";
import type { HeadOutline, TemplateData } from "./template-data.ts";

/** Items in the drawing's own places: x to the off side from the centre plane, y down from the crown, mm, and what they span. */
export interface HeadParts {
  readonly items: readonly Item[];
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The wanted head, today's over it, the level of the tips, and the dimensions. */
export function headParts(data: TemplateData, measure: Measure, by: "whole" | "halves"): HeadParts {
  const crown = data.wanted.near[0]?.[1] ?? 0;
  const down = ([y, z]: At): At => [y, crown - z];
  const all = [data.wanted, ...(data.today ? [data.today] : [])]
    .flatMap(({ near, off }) => [...near, ...off])
    .map(down);
  const tips = { near: down(data.wanted.near.at(-1) ?? [0, 0]), off: down(data.wanted.off.at(-1) ?? [0, 0]) };
  const level = Math.max(tips.near[1], tips.off[1]);
  const items = [
    ...centrePlane(level),
    ...tipsLevel(tips, level),
    ...doubt(data, tips),
    ...outline("wanted head", data.wanted, down, "medium", false),
    ...(data.today ? outline("today's head", data.today, down, "thin", true) : []),
    ...(by === "whole" ? wholeSpread(data, tips, level, measure) : halfSpreads(tips, level, measure)),
    ...uprightDimension("depth", [0, 0], [0, level], 14, printed(data.depth, "mm"), FIGURE),
    ...faceWords(data, level),
  ];
  const xs = all.map(([x]) => x);
  const ys = all.map(([, y]) => y);
  return {
    items,
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    bottom: Math.max(...ys),
  };
}

interface Tips {
  readonly near: At;
  readonly off: At;
}

/** The figure left of the middle, where a centre plane does not run through it. */
const wholeSpread = ({ spread }: TemplateData, { near, off }: Tips, level: number, measure: Measure) =>
  levelDimension("spread", near, off, level + 14, printed(spread, "mm"), FIGURE, measure, 0.25);

/** Each half from the centre plane to its tip, so that a half alone can be checked. */
const halfSpreads = (tips: Tips, level: number, measure: Measure): readonly Item[] =>
  SIDES.flatMap((side) => {
    const figure = printed({ value: Math.abs(tips[side][0]), u: undefined }, "mm");
    return levelDimension(
      `half spread, ${side}`,
      [0, level],
      tips[side],
      level + 14,
      figure,
      FIGURE,
      measure,
    );
  });

function outline(
  name: string,
  head: HeadOutline,
  down: (at: At) => At,
  pen: "thin" | "medium",
  dashed: boolean,
): readonly Item[] {
  return SIDES.map((side) => line(`${name}, ${side}`, pen, head[side].map(down), { dashed }));
}

/** Long and short strokes, as for every axis of symmetry. */
function centrePlane(level: number): readonly Item[] {
  const strokes: Item[] = [];
  for (let y = -3; y < level + 5; y += 14) {
    strokes.push(
      line("centre plane", "thin", [
        [0, y],
        [0, Math.min(y + 9, level + 5)],
      ]),
    );
    strokes.push(
      line("centre plane", "thin", [
        [0, y + 11],
        [0, y + 12],
      ]),
    );
  }
  return strokes;
}

function tipsLevel(tips: Tips, level: number): readonly Item[] {
  return [
    line("level of the tips", "thin", [
      [tips.near[0], level],
      [tips.off[0], level],
    ]),
    words("level of the tips, words", SMALL, [tips.near[0] + 20, level + 3.4], "level of the tips"),
    words("level of the tips, words", SMALL, [tips.off[0] - 20, level + 3.4], "level of the tips", {
      anchor: "end",
    }),
  ];
}

/** How far each tip may really lie to either side, at true scale: half of the spread's doubt on each. */
function doubt(data: TemplateData, tips: Tips): readonly Item[] {
  const { u } = data.spread;
  if (u === undefined || u === 0) return [];
  return SIDES.flatMap((side) => {
    const [x, y] = [tips[side][0], tips[side][1] + 5];
    const name = `doubt of the tip, ${side}`;
    return [
      line(name, "medium", [
        [x - u / 2, y],
        [x + u / 2, y],
      ]),
      line(name, "thin", [
        [x - u / 2, y - 1.5],
        [x - u / 2, y + 1.5],
      ]),
      line(name, "thin", [
        [x + u / 2, y - 1.5],
        [x + u / 2, y + 1.5],
      ]),
    ];
  });
}

function faceWords(data: TemplateData, level: number): readonly Item[] {
  const face = `${data.face} face`;
  const y = level * 0.8;
  return [
    words("face, near", TEXT, [-20, y], face, { anchor: "end" }),
    words("face, off", TEXT, [20, y], face),
  ];
}
