import { abreast, type Block, EMPTY, stacked } from "../engine/drawing/block.ts";
import { box, line, words } from "../engine/drawing/marks.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { At, Item, Measure } from "../engine/drawing.ts";
import { SIDES, type Side, STATIONS, type Station } from "../terms/places.ts";
import { printed } from "./figures.ts";
import { FIGURE, HEADING, SMALL } from "./looks.ts";
import type { FillAcross, PanelSheet } from "./panel-data.ts";

/** The map's room, mm. */
const MAP_WIDE = 74;
const GAP = 6;
/** One cell of the map, mm: three across a panel, the channel between the two. */
const CELL = { wide: 10.5, high: 14 } as const;
const CHANNEL = 8;
const TOP = 8;
/** Under the map: which edge is which. */
const FOOT = 5;
const ROW_HIGH = 3.6;
const ACROSS: readonly (keyof FillAcross)[] = ["inner", "middle", "outer"];
const STATION_WORDS: { readonly [S in Station]: string } = { front: "front", mid: "mid", rear: "rear" };

/** Work on the panel, seen from above, head end up, near on the left: what is added and taken out in mm, and what that does. */
export function panelPart(panel: PanelSheet | undefined, width: number, measure: Measure): Block {
  if (panel === undefined || panel.says.length === 0) return EMPTY;
  const { wedges, fill, says, rows } = panel;
  const beside = fill === undefined ? 0 : MAP_WIDE + GAP;
  const text = width - beside;
  const column = stacked(
    [
      paragraph("panel, heading", "Panel", HEADING, text, measure),
      paragraph("panel", says.join(" "), SMALL, text, measure),
      paragraph("panel, wedges", wedges.join(" "), SMALL, text, measure),
      evenness(rows, text),
    ],
    1,
  );
  return fill === undefined
    ? column
    : abreast([
        { x: 0, block: flockMap(fill) },
        { x: beside, block: column },
      ]);
}

function flockMap(fill: NonNullable<PanelSheet["fill"]>): Block {
  const left = (MAP_WIDE - 6 * CELL.wide - CHANNEL) / 2 + 3;
  const title = "mm to add (+, hatched) and take out (−)";
  const items: Item[] = [
    words("flock map, of", { ...SMALL, bold: true }, [0, 2.6], title),
    words("flock map, near", SMALL, [left, 6.6], "near (left)"),
    words("flock map, off", SMALL, [left + 6 * CELL.wide + CHANNEL, 6.6], "off (right)", { anchor: "end" }),
  ];
  STATIONS.forEach((station, row) => {
    const y = TOP + row * CELL.high;
    const middle = y + CELL.high / 2;
    items.push(
      words(`flock map, ${station}`, SMALL, [left - 1.4, middle], STATION_WORDS[station], {
        anchor: "middle",
        turn: -90,
      }),
    );
    SIDES.forEach((side) => {
      ACROSS.forEach((place, across) => {
        const mm = fill[side][station][place];
        items.push(...cell(`${station}, ${side}, ${place}`, mm, [cellLeft(left, side, across), y]));
      });
    });
  });
  const high = TOP + STATIONS.length * CELL.high;
  return {
    items: [
      ...items,
      ...edgeWords(left, high + 3.6),
      ...SIDES.map((side) =>
        box(
          `panel, ${side}`,
          "medium",
          [cellLeft(left, side, side === "near" ? 2 : 0), TOP],
          3 * CELL.wide,
          high - TOP,
        ),
      ),
      line(
        "spine",
        "thin",
        [
          [left + 3 * CELL.wide + CHANNEL / 2, TOP - 1],
          [left + 3 * CELL.wide + CHANNEL / 2, high + 1],
        ],
        { dashed: true },
      ),
    ],
    height: high + FOOT,
  };
}

function edgeWords(left: number, y: number): readonly Item[] {
  return SIDES.flatMap((side) =>
    (["outer", "inner"] as const).map((edge) => {
      const x = cellLeft(left, side, edge === "inner" ? 0 : 2) + CELL.wide / 2;
      return words(`flock map, ${side}, ${edge}`, SMALL, [x, y], edge, { anchor: "middle" });
    }),
  );
}

/** Near on the left with its inner edge toward the spine, off its mirror image. */
const cellLeft = (left: number, side: Side, across: number): number =>
  side === "near" ? left + (2 - across) * CELL.wide : left + 3 * CELL.wide + CHANNEL + across * CELL.wide;

function cell(name: string, mm: number, at: At): readonly Item[] {
  const place: At = [at[0] + CELL.wide / 2, at[1] + CELL.high / 2 + 1];
  const figure = mm === 0 ? "0" : `${mm > 0 ? "+" : "−"}${Math.abs(mm)}`;
  return [
    box(`fill, ${name}`, "thin", at, CELL.wide, CELL.high, mm > 0 ? "hatch" : "none"),
    ...(mm > 0
      ? [box(`fill, ${name}, ground`, "thin", [place[0] - 4.4, place[1] - 3.4], 8.8, 4.8, "paper")]
      : []),
    words(`fill, ${name}, mm`, FIGURE, place, figure, { anchor: "middle" }),
  ];
}

function evenness(rows: PanelSheet["rows"], width: number): Block {
  if (rows.length === 0) return EMPTY;
  const [before, after] = [width - 26, width];
  const head: readonly Item[] = [
    words("evenness, before", { ...SMALL, bold: true }, [before, 2.6], "before", { anchor: "end" }),
    words("evenness, after", { ...SMALL, bold: true }, [after, 2.6], "after the fill", { anchor: "end" }),
  ];
  const items = rows.flatMap((row, i): readonly Item[] => {
    const y = 2.6 + (i + 1) * ROW_HIGH;
    return [
      words(`evenness, ${row.what}`, SMALL, [0, y], row.what),
      words(`evenness, ${row.what}, before`, SMALL, [before, y], printed(row.before, row.unit), {
        anchor: "end",
      }),
      words(`evenness, ${row.what}, after`, SMALL, [after, y], printed(row.after, row.unit), {
        anchor: "end",
      }),
    ];
  });
  return { items: [...head, ...items], height: (rows.length + 1) * ROW_HIGH };
}
