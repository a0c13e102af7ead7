import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { doubtOf, INSTRUMENT_RECORDS } from "../../core/src/survey/instrument-records.ts";
import { readCase } from "../../core/src/survey/read-case.ts";
import { isRead, type Measured, type Reading } from "../../core/src/survey/reading.ts";
import { meanOf, ownOfMean } from "../../core/src/survey/repeats.ts";
import { INSTRUMENTS } from "../../core/src/terms/instruments.ts";
import { propertySeed } from "../number/seed.ts";
import { type Breakable, changed, fixtureText, surveyOf } from "./cases.ts";

const RUNS = { seed: propertySeed("readings and repeats"), numRuns: 500 };

function reading(measured: Measured | undefined): Reading {
  if (!measured || !isRead(measured)) throw new Error("no reading");
  return measured;
}
const depth = (typed: unknown): Reading =>
  reading(surveyOf(changed((file: Breakable) => (file.saddle.head.depth = typed))).saddle.head.depth);

describe("a reading", () => {
  it("has the uncertainty of its instrument, in the kept unit", () => {
    const { saddle, horses } = surveyOf(readCase(fixtureText("full")));
    expect(reading(saddle.head.depth)).toMatchObject({
      value: 95,
      own: 1,
      shared: 0.5,
      instrument: "ruler",
      typed: "95",
      unit: "mm",
      repeats: [],
    });
    expect(reading(saddle.head.halfAngleNear).own).toBeCloseTo(Math.PI / 180, 12);
    expect(reading(saddle.head.halfAngleNear).shared).toBeCloseTo(Math.PI / 180, 12);
    expect(reading(horses[0]?.girthed.bridgeNear)).toMatchObject({ own: 0.5, shared: 0 });
  });

  it("keeps what the hand wrote", () => {
    const head = surveyOf(readCase(fixtureText("inches"))).saddle.head;
    expect(reading(head.spreadTips)).toMatchObject({
      typed: '8 1/16", 8-1/8 in, 8 1/16 in',
      unit: "in",
      ownTyped: true,
    });
    expect(reading(head.spreadTips).own).toBeCloseTo(25.4 / 16, 12);
    expect(reading(head.spreadTips).value).toBeCloseTo((25.4 * (8.0625 + 8.125 + 8.0625)) / 3, 9);
  });

  it("takes a typed uncertainty for its own part and leaves the shared part", () => {
    expect(depth({ read: 95, uncertainty: 3 })).toMatchObject({ own: 3, shared: 0.5 });
    expect(depth({ read: 95, uncertainty: "0.3 cm" })).toMatchObject({ own: 3, shared: 0.5 });
  });

  it("takes fingers and eye for less", () => {
    expect(depth({ read: 95, by: "fingers" })).toMatchObject({ own: 5, shared: 3, instrument: "fingers" });
    expect(depth({ read: 95, by: "eye" }).own).toBeGreaterThan(5);
  });

  it("by calliper is better on a bare tree than through leather", () => {
    const bare = surveyOf(changed((file: Breakable) => (file.saddle.looked.level = "bare"))).saddle.head;
    const dressed = surveyOf(readCase(fixtureText("full"))).saddle.head;
    expect(reading(dressed.thickness)).toMatchObject({ own: 2, shared: 0.5, value: 18 });
    expect(reading(bare.thickness)).toMatchObject({ own: 0.5, shared: 0.2, value: 18 });
    expect(reading(bare.depth)).toEqual(reading(dressed.depth));
    // Three repeats of 204, 205, 206: their standard error 1 / sqrt 3 is more than 0.5 / sqrt 3.
    expect(reading(bare.spreadTips).own).toBeCloseTo(1 / Math.sqrt(3), 12);
    expect(reading(dressed.spreadTips).own).toBeCloseTo(2 / Math.sqrt(3), 12);
  });

  it.each(["unknown", "not-asked", "not-looked", "cannot-be-seen"])("%s stays what it is", (word) => {
    expect(surveyOf(changed((file: Breakable) => (file.saddle.head.depth = word))).saddle.head.depth).toEqual(
      { absent: word },
    );
  });

  it("left out was not looked at", () => {
    expect(surveyOf(changed((file: Breakable) => delete file.saddle.head.depth)).saddle.head.depth).toEqual({
      absent: "not-looked",
    });
  });
});

describe("repeats", () => {
  const values = fc.array(fc.double({ min: 60, max: 170, noNaN: true }), { minLength: 2, maxLength: 20 });

  it("give their mean, and the larger of instrument / sqrt n and their standard error", () => {
    fc.assert(
      fc.property(values, (repeats) => {
        const got = depth({ read: repeats });
        // A second way to the variance: over all pairs, without the mean.
        const n = repeats.length;
        const pairs = repeats.flatMap((a, i) => repeats.slice(i + 1).map((b) => (a - b) ** 2));
        const error = Math.sqrt(pairs.reduce((sum, square) => sum + square, 0) / (n * (n - 1)) / n);
        expect(got.value).toBeCloseTo(repeats.reduce((sum, one) => sum + one, 0) / n, 9);
        expect(got.own).toBeCloseTo(Math.max(1 / Math.sqrt(n), error), 9);
        expect(got.shared).toBe(0.5);
        expect(got.repeats).toEqual(repeats);
      }),
      RUNS,
    );
  });

  it("do not depend on their order", () => {
    fc.assert(
      fc.property(values, (repeats) => {
        const turned = [...repeats].reverse();
        expect(ownOfMean(1, turned)).toBeCloseTo(ownOfMean(1, repeats), 9);
        expect(meanOf(turned)).toBeCloseTo(meanOf(repeats), 9);
      }),
      RUNS,
    );
  });
});

describe("the table of instruments", () => {
  it("holds each instrument once, with a word on where its figures come from", () => {
    expect(INSTRUMENT_RECORDS.map(({ instrument }) => instrument).sort()).toEqual([...INSTRUMENTS].sort());
    for (const { provenance, says } of INSTRUMENT_RECORDS)
      expect([provenance, says].every((words) => words.length > 3)).toBe(true);
  });

  it("holds the assumed figures: a flexible curve 3 mm and 2 degrees in all, half of the variance shared", () => {
    const [length, angle] = [doubtOf("flexible-curve", "length"), doubtOf("flexible-curve", "angle")];
    expect(Math.sqrt((length?.own ?? 0) ** 2 + (length?.shared ?? 0) ** 2)).toBeCloseTo(3, 12);
    expect(length?.own).toBe(length?.shared);
    expect(Math.sqrt((angle?.own ?? 0) ** 2 + (angle?.shared ?? 0) ** 2)).toBeCloseTo(
      (2 * Math.PI) / 180,
      12,
    );
    expect(doubtOf("template", "length")).toEqual({ own: 1, shared: 0 });
    expect(doubtOf("ruler", "angle")).toBeUndefined();
  });
});
