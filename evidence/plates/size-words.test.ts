import fc from "fast-check";
import { expect, test } from "vitest";
import { commonLevelMm, wordsCompared } from "../../core/src/reach/plates/compared.ts";
import { spreadAtMm } from "../../core/src/shape/plate.ts";
import { propertySeed } from "../number/seed.ts";
import { piece, stockOf } from "./samples.ts";

/*
 * What makers' words stand for. What these checks cannot see: how far pieces of a real maker differ; it is assumed where
 * few were measured, and printed.
 */

const SEED = propertySeed("words for sizes", 20260402);

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test("a spread brought to another level and back is the same, by any level between", () => {
  fc.assert(
    fc.property(
      mm(80, 260),
      mm(35, 130),
      mm(35, 130),
      mm(35, 130),
      mm(0.3, 1),
      (spread, from, via, to, angle) => {
        const there = spreadAtMm(spread, from, to, angle);
        expect(spreadAtMm(there, to, from, angle)).toBeCloseTo(spread, 9);
        expect(spreadAtMm(spreadAtMm(spread, from, via, angle), via, to, angle)).toBeCloseTo(there, 9);
        // Lower is wider, and by the slope of both legs.
        expect(there - spread).toBeCloseTo(2 * (to - from) * Math.tan(angle), 9);
      },
    ),
    { seed: SEED },
  );
});

test("words are opaque: other words and makers, in another order, give the same figures", () => {
  const rows = [
    ["Fennock", "lark", 106],
    ["Fennock", "lark", 108],
    ["Fennock", "wren", 120],
    ["Orlsund", "hill", 112],
  ] as const;
  const of = (
    names: (maker: string, word: string) => readonly [string, string],
    order: readonly number[],
  ) => {
    const pieces = order.map((i) => {
      const [maker, word, spread] = rows[i] ?? rows[0];
      const [newMaker, newWord] = names(maker, word);
      return piece(newMaker, newWord, spread);
    });
    return wordsCompared(stockOf(pieces), 80)
      .words.map(({ pieces: count, spreadMm }) => [count, spreadMm.value])
      .sort((a, b) => (a[1] ?? 0) - (b[1] ?? 0));
  };
  const there = of((maker, word) => [maker, word], [0, 1, 2, 3]);
  expect(there).toEqual([
    [2, 107],
    [1, 112],
    [1, 120],
  ]);
  expect(of((maker, word) => [`${word}s`, `the ${maker}`.repeat(2) + word], [3, 1, 2, 0])).toEqual(there);
  // One word of two makers is two words.
  expect(of((maker) => [maker, "same"], [0, 3])).toHaveLength(2);
});

test("a piece outside is brought inside, one whose legs end above the level is left out, and so is an unread one", () => {
  const stock = stockOf([
    piece("Fennock", "lark", 110, { face: "outside" }),
    piece("Fennock", "wren", 110, { depth: 70 }),
    piece("Fennock", "heron", 110, { belowCrown: "not-looked" }),
  ]);
  const { words, leftOut } = wordsCompared(stock, 80);
  expect(words.map(({ word }) => word)).toEqual(["lark"]);
  expect(words[0]?.spreadMm.value).toBeCloseTo(110 - 6 / Math.cos(Math.PI / 4), 9);
  expect(leftOut.map(({ lacking }) => lacking)).toEqual([
    ["stock.plates[1].depth"],
    ["stock.plates[2].belowCrown"],
  ]);
  expect(commonLevelMm(stock)).toBe(70);
});

test("the doubt grows with the way to the level, and shrinks with more pieces", () => {
  const u = (belowCrown: number, count: number) =>
    wordsCompared(
      stockOf(Array.from({ length: count }, () => piece("Fennock", "lark", 110, { belowCrown }))),
      80,
    ).words[0]?.spreadMm.u ?? 0;
  expect(u(50, 1)).toBeGreaterThan(u(65, 1) * 1.05);
  expect(u(65, 1)).toBeGreaterThan(u(80, 1) * 1.05);
  expect(u(80, 4)).toBeLessThan(u(80, 1) * 0.95);
});

test("words 25 mm apart are told apart, words 1 mm apart are not, and what a calliper shares cancels", () => {
  const compared = wordsCompared(
    stockOf([piece("Fennock", "lark", 110), piece("Orlsund", "hill", 111), piece("Orlsund", "fell", 135)]),
    80,
  ).words;
  const lark = compared.find(({ word }) => word === "lark");
  expect(lark?.nearest[0]).toMatchObject({ maker: "Orlsund", word: "hill", told: false });
  expect(lark?.nearest[0]?.spreadMm.value).toBeCloseTo(-1, 9);
  const fell = compared.find(({ word }) => word === "fell");
  expect(fell?.nearest[0]?.told).toBe(true);
  const both = Math.sqrt((lark?.spreadMm.u ?? 0) ** 2 + (fell?.spreadMm.u ?? 0) ** 2);
  expect(fell?.nearest[0]?.spreadMm.u).toBeLessThan(both);
});

/** A generator of even numbers between 0 and 1 for tests, and normals by summing twelve of them. */
function chance(seed: number) {
  let state = seed;
  const even = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  return () => Array.from({ length: 12 }, even).reduce((sum, one) => sum + one, -6);
}

test.each([1, 2, 4])(
  "of %i measured pieces, differing by 1 to 4 mm, the interval holds a further one in 90 to 98 of 100 makers",
  (count) => {
    const normal = chance(SEED + count * 100);
    const makers = 160;
    const readMm = 0.5;
    let held = 0;
    for (let i = 0; i < makers; i++) {
      const [truth, betweenMm] = [120 + 2 * normal(), 1 + (3 * i) / makers];
      const stock = Array.from({ length: count }, () =>
        piece("Fennock", "lark", truth + betweenMm * normal() + readMm * normal()),
      );
      const word = wordsCompared(stockOf(stock), 80).words[0];
      const further = truth + betweenMm * normal();
      if (Math.abs(further - (word?.spreadMm.value ?? 0)) <= (word?.spreadMm.u ?? 0)) held += 1;
    }
    console.log(`${count} pieces: ${held} of ${makers}`);
    expect(held / makers).toBeGreaterThan(0.9);
    expect(held / makers).toBeLessThan(0.98);
  },
);
