import type { Layered } from "../engine/drawing/layered.ts";
import { line, words } from "../engine/drawing/marks.ts";
import type { At, Item } from "../engine/drawing.ts";
import { SIDES, type Side } from "../terms/places.ts";
import { printed } from "./figures.ts";
import type { HeadOutline, TemplateData } from "./template-data.ts";

/** Width of the piece round an outside face, mm: stiff enough in card or thin board (common practice, no source). */
const ROUND = 25;
/** Between the two halves, and between pieces and what is marked under them, mm. */
const GAP = 20;
const BAR = 100;
const NAME = { face: "figure", bold: false, size: 4 } as const;
const NOTE = { ...NAME, size: 3 } as const;
const NOTE_LEADING = 5;
/** Ticks on the edge where two halves meet, as parts of the depth, and their length, mm. */
const TICKS = [0.3, 0.8];
const TICK = 8;

/**
 * The wanted head for a machine that cuts. The inside face gives a piece that goes into the head, the outside face one
 * that goes over it; by halves each is parted at the centre plane, near left, never mirrored. Bars of 100 mm lie on the
 * mark layer of every drawing. Seen from behind.
 */
export function cutTemplateOf(data: TemplateData, byHalves: boolean): Layered {
  const head = downward(data.wanted);
  const level = Math.max(...SIDES.map((side) => head[side].at(-1)?.[1] ?? 0));
  const pieces: readonly Piece[] = byHalves
    ? SIDES.map((side) => half(data.face, head, side, level))
    : [whole(data.face, head, level)];
  const foot = level + GAP;
  const xs = pieces.flatMap(({ outline }) => outline.map(([x]) => x));
  const [left, right] = [Math.min(...xs), Math.max(...xs) + GAP];
  return {
    title: `Template of the wanted head, ${data.face} face`,
    layers: {
      cut: pieces.map(({ name, outline }) => line(name, "thin", outline, { closed: true })),
      mark: [...pieces.flatMap(({ marks }) => marks), ...bars(foot, right)],
      text: [...pieces.flatMap(({ said }) => said), ...notes(data, [left, foot + 8])],
    },
  };
}

interface Piece {
  readonly name: string;
  readonly outline: readonly At[];
  readonly marks: readonly Item[];
  readonly said: readonly Item[];
}

/** y downward from the crown. */
function downward({ near, off }: HeadOutline): HeadOutline {
  const crown = near[0]?.[1] ?? 0;
  const down = (half: readonly At[]) => half.map(([y, z]): At => [y, crown - z]);
  return { near: down(near), off: down(off) };
}

function whole(face: TemplateData["face"], head: HeadOutline, level: number): Piece {
  const arch = [...[...head.near].reverse(), ...head.off.slice(1)];
  const round =
    face === "inside" ? [] : [...border(head, "off", level), ...border(head, "near", level).reverse()];
  const y = face === "inside" ? level * 0.85 : -ROUND * 0.4;
  return {
    name: "template",
    outline: [...arch, ...round],
    marks:
      face === "inside"
        ? [
            line("centre plane", "thin", [
              [0, 0],
              [0, level],
            ]),
          ]
        : [],
    said: SIDES.map((side) =>
      words(`${side}, words`, NAME, [side === "near" ? -6 : 6, y], side, {
        anchor: side === "near" ? "end" : "start",
      }),
    ),
  };
}

/** From the tip out, up beside the head and in over its crown to the centre plane. */
function border(head: HeadOutline, side: Side, level: number): At[] {
  const out = (head[side].at(-1)?.[0] ?? 0) + (side === "near" ? -ROUND : ROUND);
  return [
    [out, level],
    [out, -ROUND],
  ];
}

/** One half, parted at the centre plane; its tip's side keeps its place left or right. */
function half(face: TemplateData["face"], head: HeadOutline, side: Side, level: number): Piece {
  const aside = side === "near" ? -GAP / 2 : GAP / 2;
  const way = side === "near" ? -1 : 1;
  const edge: readonly At[] = face === "inside" ? [[0, level]] : [...border(head, side, level), [0, -ROUND]];
  const place = ([x, y]: At): At => [x + aside, y];
  const middle = face === "inside" ? level * 0.85 : -ROUND * 0.4;
  const ticks = TICKS.map((part) => (face === "inside" ? part * level : -ROUND * part));
  return {
    name: `template, ${side} half`,
    outline: [...head[side], ...edge].map(place),
    marks: ticks.map((y, i) =>
      line(`register mark ${i + 1}`, "thin", [place([0, y]), place([way * TICK, y])]),
    ),
    said: [
      words(`${side}, words`, NAME, place([way * (TICK + 2), middle]), `${side} half`, {
        anchor: side === "near" ? "end" : "start",
      }),
    ],
  };
}

/** Without them no drawing leaves: a level and an upright bar of 100 mm. */
function bars(foot: number, right: number): readonly Item[] {
  return [
    line("bar of 100 mm, level", "thin", [
      [-BAR / 2, foot],
      [BAR / 2, foot],
    ]),
    line("bar of 100 mm, upright", "thin", [
      [right, foot - BAR],
      [right, foot],
    ]),
  ];
}

function notes(data: TemplateData, [left, top]: At): readonly Item[] {
  const { facts, face, spread, depth, halfAngle, station, temper } = data;
  return [
    `Both bars are 100 mm; all lengths in millimetres`,
    `seen from behind, near is left; not to be turned over`,
    facts.horse,
    facts.saddle,
    `${face} face; spread ${face} the tips ${printed(spread, "mm")}`,
    `tips below the crown ${printed(depth, "mm")}`,
    `half-angle near ${printed(halfAngle.near, "deg")}, off ${printed(halfAngle.off, "deg")}`,
    data.allowed,
    `${station}; back ${temper === "not asked" ? "cold or warm: not asked" : temper}`,
    `${facts.date}; ${facts.hand || "hand not said"}; readings ${facts.inputHash.slice(0, 12)}${facts.invented ? "; invented" : ""}`,
  ].map((said, i) => words(`note ${i + 1}`, NOTE, [left, top + i * NOTE_LEADING], plain(said)));
}

/** Figures in signs that every cutter's own type has. */
const plain = (said: string): string => said.replace(/±/g, "+/-").replace(/°/g, " deg").replace(/−/g, "-");
