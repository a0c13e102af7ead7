import { describe, expect, it } from "vitest";
import { U_PER_SD } from "../../core/src/engine/central.ts";
import { commonLevelMm, wordsCompared } from "../../core/src/reach/plates/compared.ts";
import { fewFactor, piecesApart, pieceU, pooled } from "../../core/src/reach/plates/pooled.ts";
import { rankedPlates, worstOf } from "../../core/src/reach/plates/ranking.ts";
import { piece, stockOf } from "./samples.ts";

/* Pooling, comparing and ranking of plates, worked out by hand. Pooled variance as in ISO 5725-2 (from memory). */

describe("pieces of one word, pooled", () => {
  // Word one: 100 and 104, read so that the draws move one up and the other down by 1. Word two: 120, moved by 1.
  const [one, two] = pooled(
    [
      [
        { base: 100, drawn: [101, 99] },
        { base: 104, drawn: [103, 105] },
      ],
      [{ base: 120, drawn: [119, 121] }],
    ],
    "spreadMm",
  );
  if (!one || !two) throw new Error("two words");
  // Scatter of the pieces 8, of which the readings make 2; four assumed differences of 2 mm, and one that was read.
  const between = (4 * 2 * 2 + (8 - 2)) / 5;
  const further = (U_PER_SD * Math.sqrt(5 / 3)) ** 2 * between;
  it("how far pieces of a word differ", () => {
    expect([one.mean, two.mean, one.pieces, two.pieces]).toEqual([102, 120, 2, 1]);
    expect(one.drawn).toEqual([102, 102]);
    for (const word of [one, two]) {
      expect(word.betweenSd).toBeCloseTo(Math.sqrt(between), 12);
      expect(word.betweenFactor).toBeCloseTo(fewFactor(5), 12);
    }
  });
  it("a further piece of a word, and a piece of one against a piece of the other", () => {
    expect(pieceU(one)).toBeCloseTo(Math.sqrt(further * 1.5), 10);
    expect(pieceU(two)).toBeCloseTo(Math.sqrt(U_PER_SD ** 2 * 2 + further * 2), 10);
    const apartBy = piecesApart(one, two);
    expect(apartBy.value).toBe(-18);
    expect(apartBy.u).toBeCloseTo(Math.sqrt(U_PER_SD ** 2 * 2 + further * 3.5), 10);
  });
  it("what the readings share cancels between two words", () => {
    const [a, b] = pooled(
      [[{ base: 100, drawn: [97, 103] }], [{ base: 120, drawn: [117, 123] }]],
      "spreadMm",
    );
    if (!a || !b) throw new Error("two words");
    expect(piecesApart(a, b).u).toBeCloseTo(Math.sqrt(2 * 2 * (U_PER_SD * Math.sqrt(2)) ** 2 * 4), 10);
  });
  it("pieces that scatter less than their readings leave what was assumed", () => {
    const [word] = pooled(
      [
        [
          { base: 100, drawn: [104, 96] },
          { base: 100, drawn: [96, 104] },
        ],
      ],
      "spreadMm",
    );
    expect(word?.betweenSd).toBeCloseTo(Math.sqrt((4 * 4) / 5), 12);
  });
});

describe("words of makers", () => {
  const { words } = wordsCompared(
    stockOf([
      piece("Orlsund", "wide", 120),
      piece("Fennock", "z", 104),
      piece("Fennock", "a", 118),
      piece("Orlsund", "narrow", 106),
    ]),
    80,
  );
  it("stand by maker, and within one from the narrowest, whatever the letters", () => {
    expect(words.map(({ maker, word }) => `${maker} ${word}`)).toEqual([
      "Fennock z",
      "Fennock a",
      "Orlsund narrow",
      "Orlsund wide",
    ]);
  });
  it("the nearest of another maker is the nearest in millimetres and degrees", () => {
    expect(words.map(({ nearest }) => nearest.map(({ word }) => word))).toEqual([
      ["narrow"],
      ["wide"],
      ["z"],
      ["a"],
    ]);
    expect(words[0]?.nearest[0]?.spreadMm.value).toBeCloseTo(-2, 9);
    expect(words[0]?.halfAngleRad.value).toBeCloseTo(Math.PI / 4, 9);
    expect(words[0]?.between.spreadMm).toBeGreaterThan(0);
    expect(words[0]?.between.halfAngleRad).toBeGreaterThan(0);
  });
  it("one maker alone has nobody to be compared with; no depth, no level", () => {
    const alone = wordsCompared(stockOf([piece("Fennock", "z", 104)]), 80);
    expect(alone.words[0]?.nearest).toEqual([]);
    expect(commonLevelMm(stockOf([piece("Fennock", "z", 104, { depth: "not-looked" })]))).toBeUndefined();
    expect(
      commonLevelMm(stockOf([piece("F", "z", 104, { depth: 90 }), piece("F", "y", 104, { depth: 84 })])),
    ).toBe(84);
  });
});

describe("ranking", () => {
  it("told where the first lies nearer in 975 of 1000 draws, and not in one fewer", () => {
    const first = { id: "first", apartMm: 1, drawn: Array.from({ length: 1000 }, () => 1) };
    const other = (nearer: number) => ({
      id: "other",
      apartMm: -2,
      drawn: Array.from({ length: 1000 }, (_, i) => (i < nearer ? 0.5 : -2)),
    });
    const [, told] = rankedPlates([other(25), first]);
    expect([told?.id, told?.firstNearerPart, told?.toldFromFirst]).toEqual(["other", 0.975, true]);
    expect(rankedPlates([other(26), first])[1]?.toldFromFirst).toBe(false);
    const [best] = rankedPlates([other(25), first]);
    expect([best?.firstNearerPart, best?.toldFromFirst, best?.nearestPart]).toEqual([
      undefined,
      false,
      0.975,
    ]);
  });
  it("equally near in every draw is not nearer; without draws nothing is told", () => {
    const same = { id: "a", apartMm: 2, drawn: [2, -2] };
    const [, second] = rankedPlates([same, { ...same, id: "b", drawn: [-2, 2] }]);
    expect([second?.id, second?.firstNearerPart, second?.nearestPart]).toEqual(["b", 0, 1]);
    const bare = rankedPlates([
      { ...same, drawn: [] },
      { id: "b", apartMm: 3, drawn: [] },
    ]);
    expect(bare.map(({ nearestPart, toldFromFirst }) => [nearestPart, toldFromFirst])).toEqual([
      [0, false],
      [0, false],
    ]);
  });
  it("of several horses the one served worst counts, in every draw", () => {
    const horses = [
      { id: 1, apartMm: 2, drawn: [2, -5] },
      { id: 2, apartMm: -3, drawn: [-1, 4] },
    ];
    expect(worstOf("plate", horses)).toEqual({ id: "plate", apartMm: -3, drawn: [2, -5] });
    expect(worstOf("plate", [])).toEqual({ id: "plate", apartMm: 0, drawn: [] });
  });
});
