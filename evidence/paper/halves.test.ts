import { expect, test } from "vitest";
import { paperInNode } from "../../bridges/paper/src/paper-node.ts";
import type { At, Document } from "../../core/src/engine/drawing.ts";
import { halfTemplateOf } from "../../core/src/report/half-template.ts";
import { sectionSheetsOf } from "../../core/src/report/section-sheets.ts";
import { findBars } from "./find-bars.ts";
import { rasterOf, wordsOf } from "./poppler.ts";
import { headOf, sheet, template } from "./samples.ts";

/*
 * Half-templates, and sections before and after. What these checks cannot see: a card that is turned over after it was
 * cut; that is why each half says which face is shown.
 */

const DPI = 600;
const { measure, paint } = await paperInNode();
const crooked = { near: headOf(190, 96).near, off: headOf(170, 96).off };
const halves = halfTemplateOf(template(180, { wanted: crooked, today: undefined }), measure);

test("each half stands on one sheet of its own, named, with the facts, near first", async () => {
  expect(halves.pages).toHaveLength(2);
  for (const [i, side] of (["near", "off"] as const).entries()) {
    const said = wordsOf(await paint({ ...halves, pages: halves.pages.slice(i, i + 1) })).replace(
      /\s+/g,
      " ",
    );
    expect(said).toContain(`${side} half`);
    expect(said).not.toContain(`${side === "near" ? "off" : "near"} half`);
    for (const fact of ["this face to you", "2026-03-14", "cold", "front, at the tree points", "Ines Tarn"])
      expect(said).toContain(fact);
  }
});

test("a half is drawn as it was handed in, to 0.001 mm, and not as the other side's", () => {
  for (const [i, side] of (["near", "off"] as const).entries()) {
    const drawn = run(halves, i, `wanted head, ${side}`);
    const [from, to] = [drawn[0] ?? [0, 0], drawn.at(-1) ?? [0, 0]];
    const wanted = crooked[side];
    const tip = wanted.at(-1) ?? [0, 0];
    expect(to[0] - from[0]).toBeCloseTo(tip[0], 3);
    expect(to[1] - from[1]).toBeCloseTo(-tip[1], 3);
    expect(
      Math.abs(to[0] - from[0] - (crooked[side === "near" ? "off" : "near"].at(-1)?.[0] ?? 0)),
    ).toBeGreaterThan(9);
  }
});

test("the register marks of both halves lie on the centre plane at one height", () => {
  const mark = (page: number) => marks(halves, page);
  const crown = (page: number) =>
    run(halves, page, `wanted head, ${page === 0 ? "near" : "off"}`)[0] ?? [0, 0];
  expect(mark(0)).toHaveLength(2);
  for (const [i, [x, y]] of mark(0).entries()) {
    const other = mark(1)[i] ?? [0, 0];
    expect(x - crown(0)[0]).toBeCloseTo(0, 6);
    expect(other[0] - crown(1)[0]).toBeCloseTo(0, 6);
    expect(y - crown(0)[1]).toBeCloseTo(other[1] - crown(1)[1], 6);
  }
});

test("the bars of half-templates and sections are 100 mm at 600 dots per inch, to 0.1 mm", async () => {
  const sections = sectionSheetsOf(sheet(), measure);
  for (const document of [halves, sections]) {
    const pdf = await paint(document);
    for (let page = 1; page <= document.pages.length; page++) {
      const raster = rasterOf(pdf, page, DPI);
      const level = findBars(raster, "level").map((bar) => bar.lengthMm);
      console.log(`${document.title}, page ${page}: ${level.map((mm) => mm.toFixed(3))}`);
      expect(Math.abs((level[0] ?? 0) - 100)).toBeLessThan(0.1);
      const upright = findBars(raster, "upright").map((bar) => bar.lengthMm);
      if (document === halves) expect(Math.abs((upright[0] ?? 0) - 100)).toBeLessThan(0.1);
    }
  }
});

test("a section at 1 : 2 is half as large as the back that was handed in, and says so", () => {
  const data = sheet();
  const document = sectionSheetsOf(data, measure);
  const drawn = run(document, 0, "back, front");
  const narrow = data.sections[0]?.back.filter(([y]) => Math.abs(y) <= 150) ?? [];
  const heights = narrow.map(([, z]) => z);
  const middle = drawn.filter(([x]) => Math.abs(x - centre(drawn)) <= 75);
  const high = Math.max(...middle.map(([, y]) => y)) - Math.min(...middle.map(([, y]) => y));
  expect(high).toBeCloseTo((Math.max(...heights) - Math.min(...heights)) / 2, 2);
  const said = document.pages.flatMap(({ items }) =>
    items.flatMap((item) => (item.kind === "text" ? [item.words] : [])),
  );
  expect(said).toContain("front, 1 : 2");
  expect(said).toContain("100 mm on paper, 200 mm on the horse (1 : 2)");
});

const centre = (points: readonly At[]): number =>
  (Math.min(...points.map(([x]) => x)) + Math.max(...points.map(([x]) => x))) / 2;

function run(document: Document, page: number, name: string): readonly At[] {
  return (
    document.pages[page]?.items.flatMap((item) =>
      item.kind === "line" && item.name === name ? item.points : [],
    ) ?? []
  );
}

/** Centres of the register marks' diamonds. */
function marks(document: Document, page: number): readonly At[] {
  return (document.pages[page]?.items ?? []).flatMap((item): At[] => {
    if (item.kind !== "line" || item.name !== "register mark" || !item.closed) return [];
    const xs = item.points.map(([x]) => x);
    const ys = item.points.map(([, y]) => y);
    return [[(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2]];
  });
}
