import { chromium } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { MissingGlyph } from "../../bridges/paper/src/missing-glyph.ts";
import { paperInNode } from "../../bridges/paper/src/paper-node.ts";
import { templateOf } from "../../core/src/report/template.ts";
import { facts, template } from "./samples.ts";

/* The SVG of a template as Chromium takes it: sizes by the browser's own reckoning of millimetres. */

const paper = await paperInNode();
let browser: Awaited<ReturnType<typeof chromium.launch>>;
beforeAll(async () => {
  browser = await chromium.launch({
    executablePath: "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu"],
  });
});
afterAll(async () => {
  await browser.close();
});

const PX_PER_MM = 96 / 25.4;

test("bars and outline at true size, words as wide as the layout reckoned", async () => {
  const document = templateOf(template(150), paper.measure);
  const [svg = ""] = paper.paintSvg(document);
  const page = await browser.newPage();
  await page.setContent(`<!doctype html><body style="margin:0">${svg.replaceAll("&quot;", '"')}</body>`);
  await page.evaluate("document.fonts.ready");
  const found = await page.evaluate(`(() => {
    const size = (name) => document.querySelector('[data-name="' + name + '"]').getBoundingClientRect();
    const title = document.querySelector('[data-name="kind of sheet"]');
    return {
      level: size("bar of 100 mm, level").width, upright: size("bar of 100 mm, upright").height,
      inches: size("bar of 4 inches").width, near: size("wanted head, near").width, high: size("wanted head, near").height,
      words: title.getComputedTextLength(), page: document.querySelector("svg").getBoundingClientRect().width,
    };
  })()`);
  const mm = found as { [name: string]: number };
  const title = document.pages[0]?.items.find((item) => item.name === "kind of sheet");
  const reckoned =
    title?.kind === "text" ? paper.measure(title.words, title.face, title.bold, title.size) : 0;
  for (const [name, expected] of [
    ["page", 210],
    ["level", 100],
    ["upright", 100],
    ["inches", 101.6],
    ["near", 75],
    ["high", 96],
  ] as const) {
    expect(Math.abs((mm[name] ?? 0) / PX_PER_MM - expected), name).toBeLessThan(0.1);
  }
  // Text is measured in the drawing's own millimetres; a fallback font would be some per cent off.
  expect(Math.abs((mm.words ?? 0) / reckoned - 1)).toBeLessThan(0.01);
});

test("it is well-formed XML with any name, and a missing sign is an error", async () => {
  const odd = template(150, { facts: facts({ horse: `Q & A <"Zoë"> ]]>`, saddle: "Łódź 'x'" }) });
  const [svg = ""] = paper.paintSvg(templateOf(odd, paper.measure));
  const page = await browser.newPage();
  const parsed = await page.evaluate((text) => {
    const tree = new DOMParser().parseFromString(text, "image/svg+xml");
    return [tree.querySelector("parsererror")?.textContent ?? "", tree.documentElement.textContent ?? ""];
  }, svg);
  expect(parsed[0]).toBe("");
  expect(parsed[1]).toContain(`Q & A <"Zoë"> ]]>`);
  const wanting = template(150, { station: "front ☂" });
  expect(() => templateOf(wanting, paper.measure)).toThrow(MissingGlyph);
});
