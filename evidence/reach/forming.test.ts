import { describe, expect, test } from "vitest";
import { FORMING, formingAsked, formingCapsPassed } from "../../core/src/reach/forming.ts";
import { settingsOf } from "../../core/src/reach/settings.ts";
import { caseSchema } from "../../core/src/survey/case.ts";
import { HEAD } from "../shape/model-saddle.ts";

/*
 * Solid polymer: what the maker's people would be asked for. Figures without a sheet of the maker are from memory (5 to
 * 10 mm a heating, 10 to 20 in all, once or twice in a life); that they hold for a given polymer cannot be tested here.
 */
const surveyOf = (forming: object = {}, past: object = {}) =>
  caseSchema.parse({
    format: "treewright-case",
    version: 3,
    title: "invented",
    visit: { date: "2031-04-02" },
    saddle: {
      name: "invented",
      head: HEAD,
      build: { arch: "polymer", metal: "none", exchange: "none", movedBy: "heat", toldBy: "makers-letter" },
      forming,
      past,
    },
    horses: [{ name: "invented" }],
  });
const asked = (changeMm: number, forming: object = {}, past: object = {}) =>
  formingAsked(surveyOf(forming, past).saddle, changeMm);
const caps = (changeMm: number, forming: object = {}, past: object = {}) =>
  formingCapsPassed(asked(changeMm, forming, past));
const SHEET = { sheetAtHand: "yes", mostEachTime: 6, mostInAll: 15 };
const heated = (change: number) => ({
  alterationsKnown: "listed",
  alterations: [{ date: "2030", change, way: "heat", knownHand: "yes" }],
});

describe("what is asked for", () => {
  test("figures from memory, and marked so", () => {
    expect(FORMING).toEqual({
      eachTimeMm: [5, 10],
      inAllMm: [10, 20],
      timesInLife: [1, 2],
      provenance: "from memory",
    });
  });
  test.each([
    [5, [1, 1]],
    [6, [1, 2]],
    [-10, [1, 2]],
    [10.5, [2, 3]],
    [-16, [2, 4]],
  ])("%d mm takes %j heatings, from memory", (mm, times) => {
    expect(asked(mm)).toMatchObject({ changeMm: mm, times, inAllMm: [10, 20], bySheet: false });
  });
  test("the maker's sheet stands in its place", () => {
    expect(asked(12, SHEET)).toMatchObject({ times: [2, 2], inAllMm: [15, 15], bySheet: true });
    expect(asked(12.5, SHEET).times).toEqual([3, 3]);
    expect(asked(12, { ...SHEET, sheetAtHand: "no" }).bySheet).toBe(false);
    expect(asked(12, { ...SHEET, mostInAll: "not-looked" }).bySheet).toBe(false);
    expect(asked(12, { ...SHEET, mostEachTime: "not-looked" })).toMatchObject({
      bySheet: false,
      times: [2, 3],
    });
  });
  test("from as made, by the larger of record and measure", () => {
    expect(asked(6, {}, heated(5)).fromAsMadeMm).toBe(11);
    expect(asked(-6, {}, heated(5)).fromAsMadeMm).toBe(1);
    expect(asked(-6, {}, heated(5)).heatedTimes).toBeUndefined();
    expect(asked(6, { heatedTimes: 1 }).heatedTimes).toBe(1);
  });
});

describe("caps of forming", () => {
  test("20 mm from as made, or what the sheet says", () => {
    expect(caps(20)).toEqual([]);
    expect(caps(20 * 1.05, {})).toContain("cap-heat-from-as-made");
    expect(caps(16, {}, heated(5))).toContain("cap-heat-from-as-made");
    expect(caps(15, { ...SHEET, mostEachTime: 15 })).toEqual([]);
    expect(caps(15.5, { ...SHEET, mostEachTime: 16 })).toEqual(["cap-heat-from-as-made"]);
  });
  test("two heatings in a life; those that nobody knows of are not held against it", () => {
    expect(caps(10, { heatedTimes: 1 })).toEqual([]);
    expect(caps(10, { heatedTimes: 2 })).toEqual(["cap-heat-times"]);
    expect(caps(11, { heatedTimes: 1 })).toEqual(["cap-heat-times"]);
    expect(caps(10, { heatedTimes: "unknown" })).toEqual([]);
  });
});

describe("its settings", () => {
  test("by heat alone, never open here: each says whose they are", () => {
    const settings = settingsOf(surveyOf({ heatedTimes: 1 }), 205).filter(({ way }) => way !== "as-found");
    expect(settings.map(({ changeMm }) => changeMm)).toEqual(
      Array.from({ length: 21 }, (_, i) => 2 * i - 20).filter((mm) => mm !== 0),
    );
    for (const { way, changeMm, shutBy } of settings) {
      expect([way, shutBy[0]]).toEqual(["heat", "heat-by-makers-people"]);
      expect(shutBy.includes("cap-heat-times")).toBe(Math.abs(changeMm) > 10);
    }
  });
});
