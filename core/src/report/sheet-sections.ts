import { type Block, EMPTY, moved, stacked } from "../engine/drawing/block.ts";
import { clipped, type Window } from "../engine/drawing/clip.ts";
import { levelDimension } from "../engine/drawing/dimension.ts";
import { line, words } from "../engine/drawing/marks.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { At, Item, Measure } from "../engine/drawing.ts";
import { type BySide, SIDES, STATIONS } from "../terms/places.ts";
import { type Figure, printed } from "./figures.ts";
import { FIGURE, HEADING, SMALL } from "./looks.ts";
import type { SectionDrawing } from "./sheet-data.ts";

/**
 * Head, panel and back whole in the room there is: 1 : 4 in front, where one works, 1 : 6 behind, as the maps. (Neither
 * is in the list of ISO 5455; no scale of it shows them whole here.)
 */
const PLACES = {
  front: { at: [0, 6], scale: 4, width: 64, height: 68 },
  mid: { at: [68, 6], scale: 6, width: 44, height: 32 },
  rear: { at: [68, 45], scale: 6, width: 44, height: 32 },
} as const;
/** All three together, mm. */
export const SECTIONS_WIDE = 112;
/** The line of words under the heading, mm. */
const KEY_HIGH = 4;
const HIGH = 85;
/** The cut back is hatched in a rim of this part of its height, so that figures stay free. */
const RIM = 0.86;

/** Tree over back at each station, near left, cut surfaces hatched. */
export function sections(all: readonly SectionDrawing[], measure: Measure): Block {
  if (all.length === 0) return EMPTY;
  const items = STATIONS.flatMap((station) => {
    const one = all.find((section) => section.station === station);
    return one ? moved(section(one, PLACES[station], measure), PLACES[station].at) : [];
  });
  return {
    items: [
      words("sections, heading", HEADING, [0, 3], "Tree over back, seen from behind"),
      words("sections, key", SMALL, [0, 7], sectionsKey(all)),
      ...moved(items, [0, KEY_HIGH]),
    ],
    height: HIGH,
  };
}

/** Which line is which, and what the head's height is taken from. */
export function sectionsKey(all: readonly SectionDrawing[]): string {
  const stands = all.flatMap(({ head }) => (head ? [`; ${head.stands}`] : [])).join("");
  if (all.some((one) => one.chosen)) return `whole line: after the change; dashed: today${stands}`;
  if (all.some((one) => one.today.near.length > 0)) return `the tree as it is today${stands}`;
  return "the back alone: no tree was brought to rest on it";
}

/** The room that one section is drawn in, mm, and how many millimetres one on paper stands for. */
export interface SectionRoom {
  readonly scale: number;
  readonly width: number;
  readonly height: number;
}

/** One station's tree over its back, today's dashed under what it would become, with its captions. */
export function section(one: SectionDrawing, room: SectionRoom, measure: Measure): readonly Item[] {
  const { scale, width, height } = room;
  const top = Math.max(
    ...[one.back, ...heads(one), ...SIDES.map((side) => one.today[side])].flatMap((run) =>
      run.map(([, z]) => z),
    ),
  );
  const onPaper = ([y, z]: At): At => [width / 2 + y / scale, 4 + (top - z) / scale];
  const window: Window = { left: 0, top: 0, right: width, bottom: height - 8 };
  const draw = (name: string, run: readonly At[], pen: "thin" | "medium", dashed: boolean) =>
    clipped(run.map(onPaper), window).map((points) => line(name, pen, points, { dashed }));
  const tree = (name: string, halves: BySide<readonly At[]>, pen: "thin" | "medium", dashed: boolean) =>
    SIDES.flatMap((side) => draw(`${name}, ${one.station}, ${side}`, halves[side], pen, dashed));
  return [
    ...cutBack(one.station, clipped(one.back.map(onPaper), window)),
    ...tree("tree today", one.today, one.chosen ? "thin" : "medium", one.chosen !== undefined),
    ...(one.chosen ? tree("tree after the change", one.chosen, "medium", false) : []),
    ...(one.head
      ? draw("head today", one.head.today, one.chosen ? "thin" : "medium", one.chosen !== undefined)
      : []),
    ...(one.head?.chosen ? draw("head after the change", one.head.chosen, "medium", false) : []),
    ...spread(one, onPaper, window, measure),
    ...captions(one, room, measure),
  ];
}

/** The back's line, and a hatched rim within it. */
function cutBack(station: string, runs: readonly (readonly At[])[]): readonly Item[] {
  return runs.flatMap((run) => {
    const foot = Math.max(...run.map(([, y]) => y));
    const middle = run.reduce((sum, [x]) => sum + x, 0) / run.length;
    const rim = run.map(([x, y]): At => [middle + (x - middle) * RIM, foot + (y - foot) * RIM]).reverse();
    return [
      {
        kind: "line" as const,
        name: `cut, ${station}`,
        pen: "thin" as const,
        points: [...run, ...rim],
        closed: true,
        dashed: false,
        fill: "hatch" as const,
      },
      line(`back, ${station}`, "medium", run),
    ];
  });
}

function captions(
  one: SectionDrawing,
  { scale, width, height }: SectionRoom,
  measure: Measure,
): readonly Item[] {
  const name = `${one.station}, 1 : ${scale}`;
  const set = SIDES.map((side) =>
    paragraph(
      `misfit, ${one.station}, ${side}`,
      `${side}: ${leaning(one.misfit[side])}`,
      SMALL,
      width,
      measure,
    ),
  );
  return [
    words("section, near", SMALL, [0, 2], "near"),
    words("section, name", { ...SMALL, bold: true }, [width / 2, 2], name, { anchor: "middle" }),
    words("section, off", SMALL, [width, 2], "off", { anchor: "end" }),
    ...moved(stacked(set).items, [0, height - 3]),
  ];
}

const heads = ({ head }: SectionDrawing): readonly (readonly At[])[] =>
  head ? [head.today, ...(head.chosen ? [head.chosen] : [])] : [];

/** The spread inside the tips as a dimension, where the drawing shows both tips. */
function spread(
  one: SectionDrawing,
  onPaper: (at: At) => At,
  window: Window,
  measure: Measure,
): readonly Item[] {
  if (!one.spread) return [];
  const [near, off] = [onPaper(one.spread.tips.near), onPaper(one.spread.tips.off)];
  const seen = near[0] > window.left && off[0] < window.right && Math.max(near[1], off[1]) < window.bottom;
  const level = Math.min(Math.max(near[1], off[1]) + 9, window.bottom + 3);
  const type = { ...FIGURE, size: 2.4 };
  return seen
    ? levelDimension(
        `spread, ${one.station}`,
        near,
        off,
        level,
        printed(one.spread.figure, "mm"),
        type,
        measure,
      )
    : [];
}

/** Which way the tree's face leaves the back's, in words and degrees. */
function leaning(misfit: Figure | undefined): string {
  if (!misfit) return "not read";
  const way = misfit.value < 0 ? "flatter than the back" : "steeper than the back";
  return `${printed({ value: Math.abs(misfit.value), u: misfit.u }, "deg")} ${way}`;
}
