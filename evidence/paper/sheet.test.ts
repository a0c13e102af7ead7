import fc from "fast-check";
import { expect, test } from "vitest";
import { paperInNode } from "../../bridges/paper/src/paper-node.ts";
import type { Document, Item } from "../../core/src/engine/drawing.ts";
import { letterOf } from "../../core/src/report/letter.ts";
import { sheetOf } from "../../core/src/report/sheet.ts";
import { FRAME } from "../../core/src/report/sheet-frame.ts";
import { templateOf } from "../../core/src/report/template.ts";
import { facts, letter, sheet, template } from "./samples.ts";

const paper = await paperInNode();
const { measure } = paper;

/** Left and right of an item and its highest and lowest point, mm. */
function span(item: Item): readonly [number, number, number, number] {
  if (item.kind === "text") {
    const wide = measure(item.words, item.face, item.bold, item.size);
    const [x, y] = item.at;
    if (item.turn !== 0) return [x - item.size, x + item.size, y - wide / 2, y + wide / 2];
    const left = item.anchor === "start" ? x : item.anchor === "end" ? x - wide : x - wide / 2;
    return [left, left + wide, y - item.size * 0.75, y + item.size * 0.25];
  }
  const points = item.kind === "line" ? item.points : item.rings.flat();
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
}

function outside(document: Document): readonly string[] {
  return document.pages.flatMap((page) =>
    page.items
      .filter((item) => !item.name.startsWith("bar of 100 mm, upright"))
      .filter((item) => {
        const [left, right, top, bottom] = span(item);
        return (
          left < FRAME.left - 0.01 ||
          right > FRAME.right + 0.2 ||
          top < FRAME.top - 0.01 ||
          bottom > FRAME.bottom + 0.2
        );
      })
      .map(
        (item) =>
          `${item.name}: ${item.kind === "text" ? item.words : ""} ${span(item).map((v) => v.toFixed(1))}`,
      ),
  );
}

const NAMES = fc.string({ unit: fc.constantFrom(..."abc xyz W.iä"), minLength: 1, maxLength: 200 });

const LONG = "Measured at every station on both sides, written down at once and read back aloud. ".repeat(2);
const WORDY = {
  says: LONG,
  because: [{ says: LONG, source: LONG }],
  nextStep: LONG,
  who: LONG,
};

test("nothing on any sheet leaves its frame, however long the names", () => {
  fc.assert(
    fc.property(
      NAMES,
      NAMES,
      NAMES,
      NAMES,
      fc.integer({ min: 0, max: 3 }),
      (caseTitle, horse, saddle, hand, stops) => {
        const named = facts({
          caseTitle,
          horse,
          saddle,
          hand,
          stop: Array.from(
            { length: stops },
            () => "Do not ride in this saddle: a part that carries the rider has failed.",
          ),
        });
        const wordy = sheet({
          facts: named,
          horse: WORDY,
          saddle: WORDY,
          work: WORDY,
          next: LONG,
          missing: [LONG, LONG],
        });
        expect(outside(sheetOf(wordy, measure))).toEqual([]);
        expect(outside(templateOf(template(232, { facts: named }), measure))).toEqual([]);
        expect(outside(letterOf(letter({ facts: named }), measure))).toEqual([]);
      },
    ),
    { numRuns: 40, seed: 20260314 },
  );
});

test.each([90, 150, 164, 180, 240, 300, 360])(
  "a template of %d mm: the tiles together show all of it",
  (spreadMm) => {
    const data = template(spreadMm);
    const document = templateOf(data, measure);
    expect(outside(document)).toEqual([]);
    for (const page of document.pages) {
      const names = new Set(page.items.map((item) => item.name));
      for (const bar of [
        "bar of 100 mm, level",
        "bar of 100 mm, upright",
        "bar of 4 inches",
        "scale bars, request",
      ])
        expect(names).toContain(bar);
      expect(names.has("near, words") || names.has("off, words")).toBe(true);
    }
    for (const side of ["near", "off"]) {
      const drawn = document.pages
        .flatMap((page) => page.items)
        .flatMap((item) => (item.kind === "line" && item.name === `wanted head, ${side}` ? [item] : []));
      // On each sheet the line is long enough that all pieces less their overlaps make up the whole.
      const long = drawn.reduce((sum, item) => sum + lengthOf(item.points), 0);
      expect(long).toBeGreaterThan(lengthOf(data.wanted[side === "near" ? "near" : "off"]) - 0.01);
    }
  },
);

test.each(["template", "sheet", "letter"] as const)(
  "%s: frame, numbering, hand, readings and the word invented",
  (kind) => {
    const make = (over: Parameters<typeof facts>[0]) => {
      const said = facts(over);
      if (kind === "template") return templateOf(template(232, { facts: said }), measure);
      return kind === "sheet"
        ? sheetOf(sheet({ facts: said }), measure)
        : letterOf(letter({ facts: said }), measure);
    };
    const document = make({});
    document.pages.forEach((page, i) => {
      const said = page.items.flatMap((item) => (item.kind === "text" ? [item] : []));
      const all = said.map((item) => item.words).join(" ");
      expect(all).toContain(`${i + 1} of ${document.pages.length}`);
      for (const word of ["Bramble", "2026-03-14", "Ines Tarn", "0.1.0", "9f2c41d07ab3"])
        expect(all).toContain(word);
      expect(said.find((item) => item.words === "invented")?.size).toBeGreaterThanOrEqual(9);
      expect(page.items.some((item) => item.name === "back line")).toBe(true);
    });
    const real = make({ invented: false });
    expect(
      real.pages
        .flatMap((page) => page.items)
        .some((item) => item.kind === "text" && item.words === "invented"),
    ).toBe(false);
  },
);

test("fifty limits, forty missing readings and long reasons run on to further sheets, within their frames", () => {
  const { open } = sheet().limits;
  const long = {
    ...sheet().work,
    because: Array.from({ length: 24 }, (_, i) => ({
      says: `Reason ${i} ${"with many words ".repeat(8)}`,
      source: "common practice, no source",
    })),
  };
  const document = sheetOf(
    sheet({
      work: long,
      limits: { ...sheet().limits, open: Array.from({ length: 10 }, () => open).flat() },
      missing: Array.from({ length: 40 }, (_, i) => `reading number ${i}`),
    }),
    measure,
  );
  expect(document.pages.length).toBeGreaterThan(2);
  expect(outside(document)).toEqual([]);
  expect(
    document.pages.flatMap((page) => page.items).filter((item) => item.name.startsWith("limit, outcome")),
  ).toHaveLength(100);
});

function lengthOf(points: readonly (readonly [number, number])[]): number {
  return points
    .slice(1)
    .reduce((sum, [x, y], i) => sum + Math.hypot(x - (points[i]?.[0] ?? x), y - (points[i]?.[1] ?? y)), 0);
}
