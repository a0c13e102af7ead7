import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { clipped } from "../../core/src/engine/drawing/clip.ts";
import { areasOver, linesAt, type Net } from "../../core/src/engine/drawing/contour.ts";
import { hatch } from "../../core/src/engine/drawing/hatch.ts";
import { box, words } from "../../core/src/engine/drawing/marks.ts";
import { type Look, paragraph } from "../../core/src/engine/drawing/paragraph.ts";
import { svgOf } from "../../core/src/engine/drawing/svg.ts";
import { tiles } from "../../core/src/engine/drawing/tiles.ts";
import type { At, Measure } from "../../core/src/engine/drawing.ts";

/** Area of a ring by the shoelace rule. */
function areaOf(ring: readonly At[]): number {
  return (
    Math.abs(
      ring.reduce(
        (sum, [x, y], i) =>
          sum + x * (ring[(i + 1) % ring.length]?.[1] ?? 0) - y * (ring[(i + 1) % ring.length]?.[0] ?? 0),
        0,
      ),
    ) / 2
  );
}

describe("hatching at 45 degrees", () => {
  const ring: readonly At[] = [
    [10, 10],
    [60, 12],
    [70, 40],
    [35, 30],
    [12, 48],
  ];
  test.each(["rising", "falling"] as const)(
    "%s: the length of its lines times their distance is the area, to a hundredth",
    (slope) => {
      const pitch = 0.25;
      const long = hatch([ring], pitch, slope).reduce(
        (sum, [[x0, y0], [x1, y1]]) => sum + Math.hypot(x1 - x0, y1 - y0),
        0,
      );
      expect(Math.abs((long * pitch) / areaOf(ring) - 1)).toBeLessThan(0.01);
      for (const [[x0, y0], [x1, y1]] of hatch([ring], pitch, slope)) {
        const way = slope === "rising" ? -1 : 1;
        expect(Math.abs(y1 - y0 - way * (x1 - x0))).toBeLessThan(1e-9);
      }
    },
  );
  test("two areas with a shared edge hatch as the one they make up", () => {
    const whole: readonly At[] = [
      [0, 0],
      [40, 0],
      [40, 20],
      [0, 20],
    ];
    const halves: readonly (readonly At[])[] = [
      [
        [0, 0],
        [17, 0],
        [17, 20],
        [0, 20],
      ],
      [
        [17, 0],
        [40, 0],
        [40, 20],
        [17, 20],
      ],
    ];
    expect(hatch(halves, 2, "rising").length).toBe(hatch([whole], 2, "rising").length);
  });
  test("a hollow stays free", () => {
    const hollow: readonly At[] = [
      [10, 5],
      [30, 5],
      [30, 15],
      [10, 15],
    ];
    const lines = hatch(
      [
        [
          [0, 0],
          [40, 0],
          [40, 20],
          [0, 20],
        ],
        hollow,
      ],
      1,
      "falling",
    );
    for (const [[x0, y0], [x1, y1]] of lines) {
      const [x, y] = [(x0 + x1) / 2, (y0 + y1) / 2];
      expect(x > 10.001 && x < 29.999 && y > 5.001 && y < 14.999).toBe(false);
    }
  });
});

describe("lines of equal value", () => {
  const count = 41;
  const steps = Array.from(
    { length: count * count },
    (_, k): At => [(Math.floor(k / count) - 20) / 2, ((k % count) - 20) / 2],
  );
  const cone: Net = {
    along: count,
    across: count,
    at: steps,
    value: steps.map(([x, y]) => 10 - Math.hypot(x, y)),
  };
  test("on a cone they are circles, closed, in the right place", () => {
    for (const radius of [2, 5, 8]) {
      const lines = linesAt(cone, 10 - radius);
      expect(lines).toHaveLength(1);
      for (const [x, y] of lines[0] ?? []) expect(Math.abs(Math.hypot(x, y) - radius)).toBeLessThan(0.04);
      expect(lines[0]?.[0]).toEqual(lines[0]?.at(-1));
    }
  });
  test("the areas over a level add up to the circle's, within 1 %", () => {
    for (const radius of [3, 6, 9]) {
      const area = areasOver(cone, 10 - radius).reduce((sum, ring) => sum + areaOf(ring), 0);
      expect(Math.abs(area / (Math.PI * radius * radius) - 1)).toBeLessThan(0.01);
    }
  });
  test("nothing is over a level that nothing reaches", () => {
    expect(areasOver(cone, 11)).toEqual([]);
    expect(linesAt(cone, 11)).toEqual([]);
  });
});

test("a clipped line keeps to its window, and two windows that meet share out its length", () => {
  const coordinate = fc.double({ min: -50, max: 50, noNaN: true });
  fc.assert(
    fc.property(fc.array(fc.tuple(coordinate, coordinate), { minLength: 2, maxLength: 20 }), (points) => {
      const halves = [
        { left: -50, right: 0 },
        { left: 0, right: 50 },
      ].map((side) => clipped(points, { ...side, top: -50, bottom: 50 }));
      for (const [x] of (halves[0] ?? []).flat()) expect(x).toBeLessThan(1e-9);
      for (const [x] of (halves[1] ?? []).flat()) expect(x).toBeGreaterThan(-1e-9);
      const along = points.filter((_, i) => i > 0 && points[i - 1]?.[0] === 0 && points[i]?.[0] === 0).length;
      if (along === 0)
        expect(
          Math.abs(halves.flat().reduce((sum, run) => sum + lengthOf(run), 0) - lengthOf(points)),
        ).toBeLessThan(1e-6);
    }),
    { seed: 7, numRuns: 300 },
  );
});

test("tiles cover the whole, share at least their overlap, and are no more than needed", () => {
  const length = fc.double({ min: 1, max: 900, noNaN: true });
  fc.assert(
    fc.property(length, fc.double({ min: 20, max: 200, noNaN: true }), (long, page) => {
      const cut = tiles(-long / 3, (2 * long) / 3, page, 12);
      expect(cut[0]?.from).toBeLessThanOrEqual(-long / 3 + 1e-9);
      expect(cut.at(-1)?.to).toBeGreaterThanOrEqual((2 * long) / 3 - 1e-9);
      for (let i = 0; i + 1 < cut.length; i++)
        expect((cut[i]?.to ?? 0) - (cut[i + 1]?.from ?? 0)).toBeCloseTo(12, 6);
      if (cut.length > 1) expect((cut.length - 1) * page - (cut.length - 2) * 12).toBeLessThan(long);
    }),
    { seed: 7, numRuns: 300 },
  );
  expect(() => tiles(0, 100, 10, 12)).toThrow(RangeError);
});

describe("paragraphs", () => {
  const measure: Measure = (said, _face, _bold, size) => said.length * size * 0.5;
  const look: Look = { face: "text", bold: false, size: 2, leading: 3, figures: true };
  const linesOf = (said: string, width: number) => {
    const lines = new Map<number, string>();
    for (const item of paragraph("p", said, look, width, measure).items) {
      if (item.kind === "text") lines.set(item.at[1], (lines.get(item.at[1]) ?? "") + item.words);
    }
    return [...lines.values()].map((line) => line.trim());
  };
  test("all words are kept, in order, within the width", () => {
    fc.assert(
      fc.property(
        fc.array(fc.string({ unit: fc.constantFrom(..."abc12.,±°m"), minLength: 1, maxLength: 12 }), {
          maxLength: 40,
        }),
        (said) => {
          const lines = linesOf(said.join(" "), 25);
          expect(lines.join("").replaceAll(" ", "")).toBe(said.join(""));
          for (const line of lines) expect(measure(line, "text", false, 1.8)).toBeLessThanOrEqual(25.1);
        },
      ),
      { seed: 7, numRuns: 300 },
    );
  });
  test("a number keeps its sign and unit, and is set as a figure without the stop after it", () => {
    expect(linesOf("opened by 8.5 ± 1.2 mm, measured", 13)).toContain("8.5 ± 1.2 mm,");
    const faces = paragraph("p", "by 8.5 ± 1.2 mm, then", look, 100, measure).items.map((item) =>
      item.kind === "text" ? [item.face, item.words] : [],
    );
    expect(faces).toEqual([
      ["text", "by "],
      ["figure", "8.5 ± 1.2 mm"],
      ["text", ", then"],
    ]);
  });
});

test("SVG: true size, escaped words, named parts, hatching cut to its part", () => {
  const page = {
    width: 210,
    height: 297,
    items: [
      box("a <b> & 'c'", "medium", [10, 10], 20, 10, "hatch"),
      words("said", { face: "text", bold: false, size: 4 }, [10, 50], `"<script>" & more\u0007`),
    ],
  };
  const svg = svgOf(page, "T & <U>");
  expect(svg).toContain('width="210mm" height="297mm" viewBox="0 0 210 297"');
  expect(svg).toContain('data-name="a &lt;b&gt; &amp; &apos;c&apos;"');
  expect(svg).toContain("&quot;&lt;script&gt;&quot; &amp; more</text>");
  expect(svg).toContain("<title>T &amp; &lt;U&gt;</title>");
  for (const [, x = "", y = ""] of svg.matchAll(/[ML]([\d.]+) ([\d.]+)/g)) {
    expect(Number(x) >= 10 && Number(x) <= 30 && Number(y) >= 10 && Number(y) <= 20).toBe(true);
  }
  expect(() => svgOf({ ...page, items: [box("x", "thin", [Number.NaN, 0], 1, 1)] }, "t")).toThrow(RangeError);
});

function lengthOf(points: readonly At[]): number {
  return points
    .slice(1)
    .reduce((sum, [x, y], i) => sum + Math.hypot(x - (points[i]?.[0] ?? x), y - (points[i]?.[1] ?? y)), 0);
}
