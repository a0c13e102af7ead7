import { type Block, stacked } from "../engine/drawing/block.ts";
import { line, words } from "../engine/drawing/marks.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { At, Item, Measure } from "../engine/drawing.ts";
import { SIDES, type Side } from "../terms/places.ts";
import { printed } from "./figures.ts";
import type { GaitRow, GaitSheet, GaitThird } from "./gait-data.ts";
import { FIGURE, FINE, HEADING, SMALL } from "./looks.ts";

const CELL = { ...FIGURE, size: 2.3 };
const ROW = 3.4;
/** Where the columns of a side end, from its left, mm. */
const ENDS = { mean: 12, most: 25, area: 40, share: 52, change: 72 } as const;
type Column = keyof typeof ENDS;
const HEADS: { readonly [C in Column]: string } = {
  mean: "mean",
  most: "over 4 cm²",
  area: "area, cm²",
  share: "%",
  change: "change",
};
const NAMES_WIDE = 14;
const SIDE_WIDE = 76;
/** The force over two beats, mm; drawn on the left of no figure, under its table. */
const CURVE = { wide: 40, high: 10, top: 4 } as const;

/** Each gait at its peak: one block, so that none is parted; then the rider out of the saddle, and what it all stands on. */
export function gaitParts(gaits: GaitSheet | undefined, width: number, measure: Measure): readonly Block[] {
  if (gaits === undefined) return [];
  const heading = paragraph(
    "gaits, heading",
    "Ridden, in the calculation: pressures at the peak, kPa",
    HEADING,
    width,
    measure,
  );
  const [first, ...rest] = gaits.rows.map((row) => gaitBlock(row, width, measure));
  return [
    stacked([heading, ...(first ? [first] : [])], 0.6),
    ...rest,
    ...gaits.says.map((says, i) => paragraph(`gaits, said ${i}`, says, SMALL, width, measure)),
    ...assumedParts(gaits.assumed, width, measure),
  ];
}

function gaitBlock(row: GaitRow, width: number, measure: Measure): Block {
  const title = paragraph(
    `gait, ${row.name}`,
    `${row.name}: ${row.peak}`,
    SMALL,
    width - CURVE.wide - 3,
    measure,
  );
  const curve = curves(row, width);
  const named = { items: [...title.items, ...curve.items], height: Math.max(title.height, curve.height) };
  if (row.why !== undefined)
    return stacked([named, paragraph(`gait, ${row.name}, why`, row.why, SMALL, width, measure)], 0.4);
  return stacked([named, table(row)], 0.4);
}

function table({ name, thirds }: GaitRow): Block {
  const heads = SIDES.flatMap((side) =>
    (Object.keys(ENDS) as readonly Column[]).map((column) =>
      words(`${name}, ${side}, ${column}`, FINE, [endOf(side, column), 2.6], HEADS[column], {
        anchor: "end",
      }),
    ),
  );
  const sides = [
    words(`${name}, near`, { ...FINE, bold: true }, [NAMES_WIDE - 2, 2.6], "near"),
    words(`${name}, off`, { ...FINE, bold: true }, [NAMES_WIDE + SIDE_WIDE - 2, 2.6], "off"),
  ];
  const rows = thirds.flatMap((one, i): readonly Item[] => {
    const y = 2.6 + (i + 1) * ROW;
    return [
      words(`${name}, ${one.third}`, FINE, [0, y], one.third),
      ...SIDES.flatMap((side) => cells(`${name}, ${one.third}, ${side}`, one[side], side, y)),
    ];
  });
  return { items: [...heads, ...sides, ...rows], height: (thirds.length + 1) * ROW + 1 };
}

const endOf = (side: Side, column: Column): number =>
  NAMES_WIDE + (side === "near" ? 0 : SIDE_WIDE) + ENDS[column];

function cells(name: string, third: GaitThird, side: Side, y: number): readonly Item[] {
  const { meanKPa, mostKPa, areaCm2, sharePercent, change } = third;
  const said: readonly (readonly [Column, string])[] = [
    ["mean", meanKPa.toFixed(1)],
    ["most", mostKPa.toFixed(1)],
    ["area", areaCm2.toFixed(0)],
    ["share", sharePercent.toFixed(0)],
    ["change", change === undefined ? "" : printed(change, "kPa").replace(" kPa", "")],
  ];
  return said
    .filter(([, text]) => text !== "")
    .map(([column, text]) =>
      words(`${name}, ${column}, figure`, CELL, [endOf(side, column), y], text, { anchor: "end" }),
    );
}

/** Force over two beats beside the name: thick at the peak taken, dashed at the ends of its range, the weight as a thin line. */
function curves({ name, curves }: GaitRow, width: number): Block {
  const left = width - CURVE.wide;
  const most = Math.max(...curves.flat().map(([, times]) => times));
  const at = ([part, times]: readonly [number, number]): At => [
    left + part * CURVE.wide,
    CURVE.top + CURVE.high * (1 - times / most),
  ];
  return {
    items: [
      words(`${name}, curve`, FINE, [left, 2.6], "force over two beats; line: the weight"),
      line(`${name}, weight`, "thin", [at([0, 1]), at([1, 1])]),
      ...curves.map((curve, i) =>
        line(`${name}, force ${i}`, i === 0 ? "medium" : "thin", curve.map(at), { dashed: i > 0 }),
      ),
    ],
    height: CURVE.top + CURVE.high + 1,
  };
}

/** A long list, a few to a block, so that it may run on to another page. */
function assumedParts(assumed: readonly string[], width: number, measure: Measure): readonly Block[] {
  const A_BLOCK = 2;
  return Array.from({ length: Math.ceil(assumed.length / A_BLOCK) }, (_, i) => {
    const some = assumed.slice(i * A_BLOCK, (i + 1) * A_BLOCK).join("; ");
    const says = `${i === 0 ? "Assumed of loads and tissue, with its range: " : ""}${some}`;
    return paragraph(`gaits, assumed ${i}`, says, FINE, width, measure);
  });
}
