import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { capsPassed, needsBare, PRESS_CAPS } from "../../core/src/reach/caps.ts";
import { countReversals, type PressHistory, pressHistory } from "../../core/src/reach/history.ts";
import { settingsOf } from "../../core/src/reach/settings.ts";
import { caseSchema, type Survey } from "../../core/src/survey/case.ts";
import { propertySeed } from "../number/seed.ts";
import { HEAD } from "../shape/model-saddle.ts";

/*
 * Caps on a press (common practice, no source): 20 mm from as made, 40 mm of path, no third reversal, 8 mm dressed. Each
 * stands exactly where it is written: 5 % to either side of it the answer turns. That the caps are right for a tree
 * cannot be tested here.
 */
const seed = propertySeed("caps");
const SLIGHT = 1e-9;
const NEW: PressHistory = { known: true, netsMm: [0], pathMm: 0, reversals: 0, lastMm: undefined };
const passed = (changeMm: number, more: Partial<PressHistory> = {}) =>
  capsPassed(changeMm, { ...NEW, ...more });

interface Change {
  readonly change: number | string;
  readonly way?: string;
}

function survey(alterations: readonly Change[], head: object = {}, known = "listed"): Survey {
  return caseSchema.parse({
    format: "treewright-case",
    version: 3,
    title: "invented",
    visit: { date: "2031-04-02" },
    saddle: {
      name: "invented",
      head: { ...HEAD, ...head },
      build: { arch: "wood", metal: "plates", exchange: "none", movedBy: "press", toldBy: "seen-bare" },
      past: {
        alterationsKnown: known,
        alterations: alterations.map((one) => ({ date: "2030", way: "press", ...one })),
      },
    },
    horses: [{ name: "invented" }],
  });
}
const historyOf = (changes: readonly number[], head: object = {}) =>
  pressHistory(
    survey(
      changes.map((change) => ({ change })),
      head,
    ).saddle,
  );

describe("each cap where it is written", () => {
  test("the figures are the trade's", () => {
    const figures = Object.values(PRESS_CAPS).map(({ id, limit, unit }) => [id, limit, unit]);
    expect(figures).toEqual([
      ["cap-from-as-made", 20, "mm"],
      ["cap-path", 40, "mm"],
      ["cap-reversals", 2, "times"],
      ["cap-dressed", 8, "mm"],
    ]);
  });
  test.each([1, -1])("20 mm from as made, way %i", (way) => {
    expect(passed(20 * way)).toEqual([]);
    expect(passed((20 + SLIGHT) * way)).toEqual(["cap-from-as-made"]);
    expect(passed(20 * 0.95 * way)).toEqual([]);
    expect(passed(20 * 1.05 * way)).toEqual(["cap-from-as-made"]);
    expect(passed(8 * way, { netsMm: [12 * way] })).toEqual([]);
    expect(passed((8 + SLIGHT) * way, { netsMm: [12 * way] })).toEqual(["cap-from-as-made"]);
    // Back toward as made the same head may go far.
    expect(passed(-32 * way, { netsMm: [12 * way] })).toEqual([]);
  });
  test("40 mm of path, whichever way", () => {
    for (const way of [1, -1]) {
      expect(passed(10 * way, { pathMm: 30 })).toEqual([]);
      expect(passed((10 + SLIGHT) * way, { pathMm: 30 })).toEqual(["cap-path"]);
      expect(passed(10 * way, { pathMm: 30 * 1.05 })).toEqual(["cap-path"]);
    }
  });
  test("two reversals are the last; the same way again is none", () => {
    for (const reversals of [0, 1]) expect(passed(-3, { reversals, lastMm: 3 })).toEqual([]);
    expect(passed(-3, { reversals: 2, lastMm: 3 })).toEqual(["cap-reversals"]);
    expect(passed(3, { reversals: 2, lastMm: 3 })).toEqual([]);
    expect(passed(-3, { reversals: 2, lastMm: undefined })).toEqual([]);
  });
  test("8 mm dressed", () => {
    for (const way of [1, -1]) {
      expect(needsBare(8 * way)).toBe(false);
      expect(needsBare((8 + SLIGHT) * way)).toBe(true);
      expect([needsBare(8 * 0.95 * way), needsBare(8 * 1.05 * way)]).toEqual([false, true]);
    }
  });
  test("no change passes no cap, whatever was done before", () => {
    expect(passed(0, { netsMm: [35], pathMm: 90, reversals: 5, lastMm: 4 })).toEqual([]);
  });
});

describe("what was done before", () => {
  test("net, path and reversals of a record; exchanges do not count", () => {
    const { saddle } = survey([{ change: 6 }, { change: -4 }, { change: 9, way: "exchange" }, { change: 5 }]);
    expect(pressHistory(saddle)).toEqual({ known: true, netsMm: [7], pathMm: 15, reversals: 2, lastMm: 5 });
  });
  test("a visit that changed nothing hides no reversal", () => {
    expect(countReversals([5, 0, -5])).toBe(1);
    expect(historyOf([5, -5, 5, 0])).toMatchObject({ reversals: 2, lastMm: 5 });
  });
  test("a spread as made tells what no record does", () => {
    expect(historyOf([], { asMadeSpreadTips: 190 })).toMatchObject({ netsMm: [0, 15], pathMm: 15 });
    // Recorded 5 wider, measured 8 narrower: at the least 13 mm more were done, and a cap has to hold for each figure.
    const torn = historyOf([5], { asMadeSpreadTips: 213 });
    expect(torn).toMatchObject({ netsMm: [5, -8], pathMm: 18 });
    expect(capsPassed(16, torn)).toEqual(["cap-from-as-made"]);
    expect(capsPassed(-13, torn)).toEqual(["cap-from-as-made"]);
  });
  test("an alteration whose size nobody knows leaves the record not known", () => {
    expect(pressHistory(survey([{ change: "unknown" }]).saddle).known).toBe(false);
    expect(pressHistory(survey([], {}, "unknown").saddle).known).toBe(false);
  });
  test("one change more on the record never opens a setting", () => {
    const change = fc.integer({ min: -12, max: 12 });
    fc.assert(
      fc.property(fc.array(change, { maxLength: 6 }), fc.integer({ min: -20, max: 20 }), (changes, next) => {
        const before = historyOf(changes);
        // Done and undone: the net stays, path and reversals grow.
        const after = historyOf([...changes, 4, -4]);
        const was = capsPassed(next, before).filter((id) => id !== "cap-reversals");
        expect(capsPassed(next, after)).toEqual(expect.arrayContaining(was));
        expect(after.reversals).toBeGreaterThanOrEqual(before.reversals);
      }),
      { seed, numRuns: 300 },
    );
  });
});

describe("the settings of a press", () => {
  const settings = settingsOf(survey([{ change: 12 }]), 205);
  test("today first, then each millimetre up to 20 either way", () => {
    expect(settings[0]).toMatchObject({ way: "as-found", changeMm: 0, shutBy: [] });
    expect(settings.map((one) => one.changeMm).sort((a, b) => a - b)).toEqual(
      Array.from({ length: 41 }, (_, i) => i - 20),
    );
    expect(settings.every((one) => one.spreadMm === 205 + one.changeMm)).toBe(true);
  });
  test("what a cap shuts is listed with the cap's name, and what is too much dressed is marked", () => {
    const at = (changeMm: number) => settings.find((one) => one.changeMm === changeMm);
    // The wood's strain shuts beside the caps, and is looked at in evidence/bending.
    const caps = (changeMm: number) => at(changeMm)?.shutBy.filter((id) => id !== "cap-wood-strain");
    expect([caps(8), at(8)?.needsBare]).toEqual([[], false]);
    expect([caps(9), at(9)?.needsBare]).toEqual([["cap-from-as-made"], true]);
    expect([caps(-20), at(-20)?.needsBare]).toEqual([[], true]);
    expect([at(-2)?.shutBy, at(-20)?.shutBy]).toEqual([[], ["cap-wood-strain"]]);
  });
});
