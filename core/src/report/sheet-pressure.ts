import { type Block, EMPTY, stacked } from "../engine/drawing/block.ts";
import { areasOver, linesAt, type Net } from "../engine/drawing/contour.ts";
import { line, words } from "../engine/drawing/marks.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { At, Item, Measure } from "../engine/drawing.ts";
import type { PressureField } from "../fit/fit.ts";
import { HEADING, SMALL } from "./looks.ts";
import type { PressureMap } from "./sheet-data.ts";

/** Lines of equal pressure, kPa, one to a tint: fixed, so that two sheets compare (assumption, for drawing only). */
export const LEVELS = [1, 5, 10, 15, 20] as const;
/** Small enough that two maps stand on one sheet, one under the other. */
const SCALE = 6;
/** Of one map, mm. */
export const MAP_WIDE = 54;
const GAP = 3;
/** Room that a figure leaves in its line, mm to each side. */
const CLEAR = 1.7;

/** Each map seen from above, head end up, near left, one under the other. A comparison of settings and never a permission. */
export function pressureMaps(maps: readonly PressureMap[], limitKPa: number, measure: Measure): Block {
  const shown = maps.slice(0, 2).map((map) => pressureMap(map, limitKPa));
  if (shown.length === 0) return EMPTY;
  const heading = paragraph("pressure, heading", "Pressure at rest", HEADING, MAP_WIDE, measure);
  const said = `In kPa, 1 : ${SCALE}, seen from above. Compares settings on this back; permits nothing. Crossed: over ${limitKPa} kPa.`;
  const key = paragraph("pressure, key", said, SMALL, MAP_WIDE, measure);
  return stacked([stacked([heading, key]), ...shown], GAP);
}

function pressureMap({ of, field }: PressureMap, limitKPa: number): Block {
  const first = Math.min(...field.xMm);
  const long = (Math.max(...field.xMm) - first) / SCALE;
  const onPaper = (x: number, y: number): At => [MAP_WIDE / 2 + y / SCALE, 9 + (x - first) / SCALE];
  const nets = [0, 1].map((side) => netOf(field, side, onPaper));
  return {
    items: [
      words("pressure, of", { ...SMALL, bold: true }, [MAP_WIDE / 2, 3], of, { anchor: "middle" }),
      words("pressure, near", SMALL, [0, 6.5], "near (left)"),
      words("pressure, off", SMALL, [MAP_WIDE, 6.5], "off (right)", { anchor: "end" }),
      ...nets.flatMap((net) => [...tinted(net, limitKPa), rim(net)]),
      ...nets.flatMap(levelLines),
    ],
    height: 10 + long,
  };
}

function netOf(field: PressureField, side: number, onPaper: (x: number, y: number) => At): Net {
  const from = side * field.nx * field.nv;
  const cells = Array.from({ length: field.nx * field.nv }, (_, k) => from + k);
  return {
    along: field.nx,
    across: field.nv,
    at: cells.map((k) => onPaper(field.xMm[k] ?? 0, field.yMm[k] ?? 0)),
    value: cells.map((k) => field.kPa[k] ?? 0),
  };
}

function tinted(net: Net, limitKPa: number): readonly Item[] {
  const tints = ([0, 1, 2, 3, 4] as const).map((tint): Item => {
    return {
      kind: "band",
      name: `pressure over ${LEVELS[tint]} kPa`,
      rings: areasOver(net, LEVELS[tint]),
      tint,
    };
  });
  const over: Item = {
    kind: "band",
    name: "pressure over the limit",
    rings: areasOver(net, limitKPa),
    tint: "crossed",
  };
  return [...tints, over].filter((item) => item.kind === "band" && item.rings.length > 0);
}

function levelLines(net: Net): readonly Item[] {
  return LEVELS.flatMap((level) => {
    const runs = linesAt(net, level);
    const longest = runs.reduce<readonly At[]>((most, run) => (run.length > most.length ? run : most), []);
    const place = longest.length > 8 ? longest[Math.floor(longest.length / 3)] : undefined;
    const lines = runs.flatMap((run) => (place ? openedAt(run, place) : [run]));
    const figure = { face: "figure", bold: false, size: 2.1 } as const;
    return [
      ...lines.map((run) => line(`line of ${level} kPa`, "thin", run)),
      ...(place
        ? [
            words(`${level} kPa, figure`, figure, [place[0], place[1] + 0.75], String(level), {
              anchor: "middle",
            }),
          ]
        : []),
    ];
  });
}

/** A line without its points next to a place, so that a figure can stand there. */
function openedAt(run: readonly At[], [x, y]: At): readonly (readonly At[])[] {
  const parts: At[][] = [[]];
  for (const point of run) {
    const near = Math.abs(point[0] - x) < CLEAR && Math.abs(point[1] - y) < CLEAR;
    if (near) parts.push([]);
    else parts.at(-1)?.push(point);
  }
  return parts.filter((part) => part.length > 1);
}

/** The outline of what bears: the edge of the net. */
function rim(net: Net): Item {
  const at = (i: number, j: number): At => net.at[i * net.across + j] ?? [0, 0];
  const rows = Array.from({ length: net.along }, (_, i) => i);
  const points = [...rows.map((i) => at(i, 0)), ...rows.reverse().map((i) => at(i, net.across - 1))];
  return line("bearing", "thin", points, { closed: true });
}
