import { describe, expect, test } from "vitest";
import { BARRED_CAPS, capsPassed, needsBare, PRESS_CAPS } from "../../core/src/reach/caps.ts";
import type { PressHistory } from "../../core/src/reach/history.ts";
import { settingsOf } from "../../core/src/reach/settings.ts";
import { caseSchema } from "../../core/src/survey/case.ts";
import { HEAD } from "../shape/model-saddle.ts";

/*
 * Polymer with a metal bar has caps of its own, never those of wood: 12 mm from as made (common practice, 10 to 12), 8 mm
 * dressed; path and reversals are assumptions. Each stands where it is written, to 5 %. Whether a polymer takes it cannot
 * be tested here.
 */
const NEW: PressHistory = { known: true, netsMm: [0], pathMm: 0, reversals: 0, lastMm: undefined };
const passed = (changeMm: number, more: Partial<PressHistory> = {}) =>
  capsPassed(changeMm, { ...NEW, ...more }, BARRED_CAPS);

describe("caps of polymer with a bar", () => {
  test("figures, each with where it comes from", () => {
    const figures = Object.values(BARRED_CAPS).map(({ id, limit, provenance }) => [id, limit, provenance]);
    expect(figures).toEqual([
      ["cap-from-as-made", 12, "common practice, no source"],
      ["cap-path", 24, "assumption"],
      ["cap-reversals", 1, "assumption"],
      ["cap-dressed", 8, "common practice, no source"],
    ]);
  });
  test.each([1, -1])("12 mm from as made, way %i", (way) => {
    expect(passed(12 * way)).toEqual([]);
    expect(passed(12 * 1.05 * way)).toEqual(["cap-from-as-made"]);
    expect(passed(4 * way, { netsMm: [8 * way] })).toEqual([]);
    expect(passed(4.5 * way, { netsMm: [8 * way] })).toEqual(["cap-from-as-made"]);
  });
  test("24 mm of path, one reversal", () => {
    expect(passed(10, { pathMm: 14 })).toEqual([]);
    expect(passed(10, { pathMm: 14 * 1.05 })).toEqual(["cap-path"]);
    expect(passed(-4, { lastMm: 4, reversals: 0 })).toEqual([]);
    expect(passed(-4, { lastMm: 4, reversals: 1 })).toEqual(["cap-reversals"]);
  });
  test("8 mm dressed", () => {
    expect([needsBare(8, BARRED_CAPS), needsBare(8 * 1.05, BARRED_CAPS)]).toEqual([false, true]);
  });
  test("no cap of polymer opens what wood's shuts", () => {
    for (let mm = -20; mm <= 20; mm++)
      expect(passed(mm)).toEqual(expect.arrayContaining([...capsPassed(mm, NEW, PRESS_CAPS)]));
  });
});

describe("its settings", () => {
  const survey = caseSchema.parse({
    format: "treewright-case",
    version: 3,
    title: "invented",
    visit: { date: "2031-04-02" },
    saddle: {
      name: "invented",
      head: HEAD,
      build: { arch: "polymer", metal: "bar", exchange: "none", movedBy: "press", toldBy: "seen-bare" },
    },
    horses: [{ name: "invented" }],
  });
  const settings = settingsOf(survey, 205);
  test("are those of a press, each millimetre up to 20 either way; beyond 12 shut by its own cap", () => {
    expect(settings.filter(({ way }) => way === "press").map(({ changeMm }) => changeMm)).toEqual(
      Array.from({ length: 41 }, (_, i) => i - 20).filter((mm) => mm !== 0),
    );
    for (const { way, changeMm, shutBy, needsBare: bare } of settings) {
      if (way !== "press") continue;
      expect([changeMm, shutBy.includes("cap-from-as-made")]).toEqual([changeMm, Math.abs(changeMm) > 12]);
      expect(bare).toBe(Math.abs(changeMm) > 8);
    }
  });
});
