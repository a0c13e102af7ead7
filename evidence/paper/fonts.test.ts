import { expect, test } from "vitest";
import { MissingGlyph } from "../../bridges/paper/src/missing-glyph.ts";
import { paperInNode } from "../../bridges/paper/src/paper-node.ts";
import { words } from "../../core/src/engine/drawing/marks.ts";
import type { Document, Face } from "../../core/src/engine/drawing.ts";
import { letterOf } from "../../core/src/report/letter.ts";
import { sheetOf } from "../../core/src/report/sheet.ts";
import { templateOf } from "../../core/src/report/template.ts";
import { poppler, wordsOf } from "./poppler.ts";
import { facts, letter, sheet, template } from "./samples.ts";

const paper = await paperInNode();
const kinds: readonly (readonly [string, Document])[] = [
  ["template", templateOf(template(150), paper.measure)],
  ["letter", letterOf(letter(), paper.measure)],
  ["working sheet", sheetOf(sheet(), paper.measure)],
];

test.each(kinds)(
  "%s: every font is embedded, as a part of it, with its letters' meanings",
  async (_, document) => {
    const pdf = await paper.paint(document);
    const rows = poppler("pdffonts", pdf, [], []).toString().trim().split("\n").slice(2);
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) {
      expect(row).toMatch(/^[A-Z]{6}\+(AtkinsonHyperlegibleNext|B612Mono|SourceSerif4)-/);
      expect(row).toMatch(/\byes\s+yes\s+yes\s+\d+\s+\d+$/);
    }
  },
);

test.each(kinds)("%s: the same bytes twice", async (_, document) => {
  const [once, again] = [await paper.paint(document), await paper.paint(document)];
  expect(Buffer.compare(Buffer.from(once), Buffer.from(again))).toBe(0);
});

test("tagged, with title and language, and without a clock", async () => {
  const pdf = await paper.paint(templateOf(template(150), paper.measure));
  const info = poppler("pdfinfo", pdf, [], []).toString();
  expect(info).toMatch(/Title:\s+Template of the wanted head, 1 : 1: Bramble/);
  expect(info).toMatch(/Tagged:\s+yes/);
  expect(info).not.toMatch(/CreationDate|ModDate/);
  expect(Buffer.from(pdf).toString("latin1")).toContain("/Lang (en)");
});

test("names of many tongues stand on the sheets, sign by sign in whichever font has them", async () => {
  const named = facts({ horse: "Jiřík Ółafsdóttir", saddle: "Großer Świt – “œuvre”" });
  const sheetWords = wordsOf(await paper.paint(sheetOf(sheet({ facts: named }), paper.measure)));
  expect(sheetWords).toContain("Jiřík Ółafsdóttir");
  const letterWords = wordsOf(await paper.paint(letterOf(letter({ facts: named }), paper.measure)));
  expect(letterWords).toContain("Jiřík Ółafsdóttir");
});

test.each([
  ["text", "→"],
  ["figure", "ř"],
  ["letter", "ش"],
  ["letter", "🐴"],
] as const)(
  "a sign that the face for %s does not have (%s) is an error that says where",
  async (face: Face, sign) => {
    const item = words("a part", { face, bold: false, size: 4 }, [20, 20], `one ${sign} two`);
    const page = { width: 210, height: 297, items: [item] };
    const painted = paper.paint({ title: "t", language: "en", pages: [{ ...page, items: [] }, page] });
    await expect(painted).rejects.toThrow(MissingGlyph);
    await expect(painted).rejects.toMatchObject({
      character: sign,
      words: `one ${sign} two`,
      where: { page: 2, part: "a part" },
    });
    expect(() => paper.measure(sign, face, false, 4)).toThrow(MissingGlyph);
  },
);

test("a length that is no number is refused, in PDF as in SVG", async () => {
  const item = {
    kind: "line" as const,
    name: "bad",
    points: [[0, Number.NaN] as const],
    closed: false,
    pen: "thin" as const,
    dashed: false,
    fill: "none" as const,
  };
  await expect(
    paper.paint({ title: "t", language: "en", pages: [{ width: 210, height: 297, items: [item] }] }),
  ).rejects.toThrow(RangeError);
});
