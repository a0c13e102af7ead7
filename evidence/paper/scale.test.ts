import { expect, test } from "vitest";
import { paperInNode } from "../../bridges/paper/src/paper-node.ts";
import type { Document } from "../../core/src/engine/drawing.ts";
import { templateOf } from "../../core/src/report/template.ts";
import { findBars } from "./find-bars.ts";
import { poppler, rasterOf } from "./poppler.ts";
import { template } from "./samples.ts";

/*
 * The bars of every template sheet in a raster of 600 dots per inch (a pixel is 0.042 mm). What this cannot see:
 * what a printer or its driver makes of the page; that is why the sheet asks for its bars to be measured.
 */

const DPI = 600;
const paper = await paperInNode();

test.each([
  ["on one sheet", 150, 1],
  ["by halves", 232, 2],
])("template %s: 100 mm on both axes and 4 inches, to 0.1 mm", async (_, spreadMm, sheets) => {
  const document = templateOf(template(spreadMm), paper.measure);
  expect(document.pages).toHaveLength(sheets);
  const pdf = await paper.paint(document);
  for (let page = 1; page <= sheets; page++) {
    const raster = rasterOf(pdf, page, DPI);
    const level = findBars(raster, "level").map((bar) => bar.lengthMm);
    const upright = findBars(raster, "upright").map((bar) => bar.lengthMm);
    console.log(
      `sheet ${page}: level ${level.map((l) => l.toFixed(3))} mm, upright ${upright.map((l) => l.toFixed(3))} mm`,
    );
    expect(level).toHaveLength(2);
    expect(upright).toHaveLength(1);
    expect(Math.abs((level[0] ?? 0) - 100)).toBeLessThan(0.1);
    expect(Math.abs((level[1] ?? 0) - 101.6)).toBeLessThan(0.1);
    expect(Math.abs((upright[0] ?? 0) - 100)).toBeLessThan(0.1);
  }
});

test("the finder sees a page that is 0.2 % or 5 % too large or too small", async () => {
  for (const wrong of [0.95, 0.998, 1.002, 1.05]) {
    const pdf = await paper.paint(scaled(templateOf(template(150), paper.measure), wrong));
    const raster = rasterOf(pdf, 1, DPI);
    const bars = [...findBars(raster, "level"), ...findBars(raster, "upright")];
    expect(bars).toHaveLength(3);
    for (const bar of bars) {
      expect(Math.min(Math.abs(bar.lengthMm - 100), Math.abs(bar.lengthMm - 101.6))).toBeGreaterThan(0.1);
    }
  }
});

test("the page is A4 to a hundredth of a millimetre and asks not to be fitted", async () => {
  const pdf = await paper.paint(templateOf(template(150), paper.measure));
  const box = /MediaBox:\s+0\.00\s+0\.00\s+([\d.]+)\s+([\d.]+)/.exec(
    poppler("pdfinfo", pdf, ["-box"], []).toString(),
  );
  expect(Math.abs((Number(box?.[1]) * 25.4) / 72 - 210)).toBeLessThan(0.01);
  expect(Math.abs((Number(box?.[2]) * 25.4) / 72 - 297)).toBeLessThan(0.01);
  expect(Buffer.from(pdf).toString("latin1")).toContain("/PrintScaling /None");
});

function scaled(document: Document, by: number): Document {
  const pages = document.pages.map((page) => ({
    ...page,
    items: page.items.map((item) =>
      item.kind === "line"
        ? { ...item, points: item.points.map(([x, y]) => [x * by, y * by] as const) }
        : item,
    ),
  }));
  return { ...document, pages };
}
