import { parseString } from "dxf";
import { expect, test } from "vitest";
import { cutSvgOf } from "../../core/src/engine/drawing/cut-svg.ts";
import { dxfOf } from "../../core/src/engine/drawing/dxf.ts";
import { LAYERS, type Layered } from "../../core/src/engine/drawing/layered.ts";
import { line, words } from "../../core/src/engine/drawing/marks.ts";
import type { At } from "../../core/src/engine/drawing.ts";
import { cutTemplateOf } from "../../core/src/report/cut-template.ts";
import { wantedOutline } from "../../core/src/shape/head-outline.ts";
import { readByPython } from "./python-dxf.ts";
import { headOf, template } from "./samples.ts";

/*
 * Drawings for a cutter, read back by two other programs: the npm package dxf, and ezdxf of Debian's Python. What this
 * cannot see: what a given cutter's own software makes of the file; that is why bars of 100 mm lie on the mark layer.
 */

/** Allowed between the line that was drawn and the one that comes back, mm. */
const NEAR_MM = 0.02;
const crooked = { near: headOf(170, 96).near, off: headOf(140, 96).off };
const asked = (["inside", "outside"] as const).flatMap((face) =>
  [false, true].map((byHalves) => ({
    name: `${face}, ${byHalves ? "by halves" : "whole"}`,
    drawn: cutTemplateOf(template(155, { face, wanted: crooked }), byHalves),
    byHalves,
    face,
  })),
);

test.each(asked)(
  "$name: ezdxf reads millimetres, three layers, closed outlines, and finds nothing to put right",
  (one) => {
    const read = readByPython(dxfOf(one.drawn));
    expect([read.version, read.units, read.errors, read.fixes]).toEqual(["AC1015", 4, [], []]);
    expect(read.layers).toEqual(expect.arrayContaining([...LAYERS]));
    const cut = read.lines.filter(({ layer }) => layer === "cut");
    expect(cut.map(({ closed }) => closed)).toEqual(one.byHalves ? [true, true] : [true]);
    expect(read.lines.filter(({ layer }) => layer === "text")).toEqual([]);
    expect(read.words.every(({ layer }) => layer === "text")).toBe(true);
    expect(read.words.map(({ text }) => text).join("; ")).toContain("all lengths in millimetres");
    expect(longOf(read.lines.filter(({ layer }) => layer === "mark"))).toEqual([100, 100]);
  },
);

test.each(asked)("$name: the outline comes back to 0.02 mm, near left, by both readers", (one) => {
  const text = dxfOf(one.drawn);
  const wanted = one.byHalves
    ? [crooked.near, crooked.off]
    : [[...crooked.near].reverse().concat(crooked.off)];
  const apart = one.byHalves ? 10 : 0;
  const [python, node] = [cutOf(readByPython(text).lines), cutOf(byNode(text))];
  for (const [i, half] of wanted.entries()) {
    const aside = one.byHalves ? (i === 0 ? -apart : apart) : 0;
    const placed = half.map(([y, z]): At => [y + aside, z - (crooked.near[0]?.[1] ?? 0)]);
    for (const read of [python, node]) {
      const outline = read[i] ?? [];
      expect(farthest(placed, outline)).toBeLessThan(NEAR_MM);
      // 5 % too large, and mirrored, are seen.
      expect(
        farthest(
          placed.map(([x, y]): At => [x * 1.05, y]),
          outline,
        ),
      ).toBeGreaterThan(NEAR_MM);
      expect(
        farthest(
          placed.map(([x, y]): At => [-x, y]),
          outline,
        ),
      ).toBeGreaterThan(1);
    }
  }
});

test("the header's extents span every line, and the reader in Node sees the unit", () => {
  for (const { drawn } of asked) {
    const { header } = parseString(dxfOf(drawn));
    expect(header.insUnits).toBe(4);
    const points = byNode(dxfOf(drawn)).flatMap(({ points }) => points);
    expect(header.extMin.x).toBeLessThanOrEqual(Math.min(...points.map(([x]) => x)) + 1e-6);
    expect(header.extMax.y).toBeCloseTo(Math.max(...points.map(([, y]) => y)), 6);
  }
});

test("the round of a crown, drawn in pieces, strays from the curve by less than 0.02 mm", () => {
  for (const depthMm of [65, 95, 130])
    for (const halfAngleRad of [0.5, 0.8, 1]) {
      const half = { halfSpreadMm: 20 + (depthMm - 35) * Math.tan(halfAngleRad), halfAngleRad };
      const wanted = {
        ...half,
        spreadMm: 0,
        depthMm,
        panelMm: 0,
        larger: "near" as const,
        sides: { near: half, off: half },
      };
      for (const face of ["inside", "outside"] as const)
        expect(sagOf(wantedOutline(wanted, face, 18).off)).toBeLessThan(NEAR_MM);
    }
});

test("words come back as they were given, whatever signs they hold; a length that is no number is refused", () => {
  const said = "Zoë & Jörg ^ 50 %%d \\P \\U+0041 ✂";
  const drawing: Layered = {
    title: said,
    layers: {
      cut: [
        line(
          "o",
          "thin",
          [
            [0, 0],
            [9, 0],
            [0, 9],
          ],
          { closed: true },
        ),
      ],
      mark: [],
      text: [words("w", { face: "text", bold: false, size: 4 }, [0, 0], said)],
    },
  };
  const read = readByPython(dxfOf(drawing));
  expect([read.errors, read.fixes]).toEqual([[], []]);
  expect(read.words[0]?.text).toBe("Zoë & Jörg ^  50 % %d \\P \\U+0041 ✂");
  const broken = { ...drawing, layers: { ...drawing.layers, mark: [line("m", "thin", [[Number.NaN, 0]])] } };
  expect(() => dxfOf(broken)).toThrow(RangeError);
  expect(() => cutSvgOf(broken)).toThrow(RangeError);
  expect(() => dxfOf({ title: "", layers: { cut: [], mark: [], text: [] } })).toThrow(RangeError);
});

test.each(asked)(
  "$name: SVG says its size in millimetres, one unit for each, with the same outline",
  ({ drawn }) => {
    const svg = cutSvgOf(drawn);
    const size =
      /width="(\d+)mm" height="(\d+)mm" viewBox="(-?\d+) (-?\d+) (\d+) (\d+)"/.exec(svg)?.map(Number) ?? [];
    expect([size[5], size[6]]).toEqual([size[1], size[2]]);
    const group = (layer: string) => new RegExp(`<g id="${layer}">([\\s\\S]*?)</g>`).exec(svg)?.[1] ?? "";
    const runs = (layer: string) => [...group(layer).matchAll(/ d="([^"]+)"/g)].map(([, d = ""]) => d);
    for (const [i, d] of runs("cut").entries()) {
      expect(d.endsWith("Z")).toBe(true);
      const item = drawn.layers.cut[i];
      const points = [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(
        (at): At => [Number(at[1]), Number(at[2])],
      );
      expect(item?.kind === "line" ? farthest(item.points, points) : 1).toBeLessThan(NEAR_MM);
      for (const [x, y] of points) {
        expect(x >= (size[3] ?? 0) && x <= (size[3] ?? 0) + (size[5] ?? 0)).toBe(true);
        expect(y >= (size[4] ?? 0) && y <= (size[4] ?? 0) + (size[6] ?? 0)).toBe(true);
      }
    }
    expect(group("text")).not.toContain("<path");
    const marks = runs("mark").map((d) => ({
      points: [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map((at): At => [Number(at[1]), Number(at[2])]),
    }));
    expect(longOf(marks)).toEqual([100, 100]);
  },
);

type Run = { readonly points: readonly At[] };

/** Lengths of the straight marks from 90 mm up, but for a centre plane: the bars. */
function longOf(runs: readonly Run[]): readonly number[] {
  return runs
    .filter(({ points }) => points.every(([x]) => x !== 0))
    .map(({ points: [[x0, y0] = [0, 0], [x1, y1] = [0, 0]] }) => Math.hypot(x1 - x0, y1 - y0))
    .filter((long) => long > 90)
    .map((long) => Math.round(long * 1000) / 1000);
}

function byNode(text: string) {
  return parseString(text).entities.flatMap((entity) =>
    entity.type === "LWPOLYLINE"
      ? [
          {
            layer: entity.layer,
            closed: entity.closed,
            points: entity.vertices.map(({ x, y }): At => [x, y]),
          },
        ]
      : [],
  );
}

const cutOf = (lines: readonly (Run & { readonly layer: string })[]) =>
  lines.filter(({ layer }) => layer === "cut").map(({ points }) => points);

/** Largest distance of points from a closed line. */
function farthest(points: readonly At[], [...ring]: readonly At[]): number {
  const closed = [...ring, ring[0] ?? [0, 0]];
  return Math.max(
    ...points.map((at) => Math.min(...closed.slice(1).map((b, i) => distance(at, closed[i] ?? b, b)))),
  );
}

function distance([x, y]: At, [x0, y0]: At, [x1, y1]: At): number {
  const long = (x1 - x0) ** 2 + (y1 - y0) ** 2;
  const t = long === 0 ? 0 : Math.max(0, Math.min(1, ((x - x0) * (x1 - x0) + (y - y0) * (y1 - y0)) / long));
  return Math.hypot(x - x0 - t * (x1 - x0), y - y0 - t * (y1 - y0));
}

/** A parabola through even steps of its parameter bows over each chord by an eighth of its second difference. */
function sagOf(half: readonly At[]): number {
  const round = half.slice(0, -1);
  return Math.max(
    ...round.slice(1, -1).map(([x, y], i) => {
      const [before = [0, 0], after = [0, 0]] = [round[i], round[i + 2]];
      return Math.hypot(before[0] - 2 * x + after[0], before[1] - 2 * y + after[1]) / 8;
    }),
  );
}
