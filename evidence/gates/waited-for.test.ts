import { describe, expect, it } from "vitest";
import type { CaseToJudge } from "../../core/src/judge/input.ts";
import { judgeCase } from "../../core/src/judge/judge-case.ts";
import { type Changes, candidate, faces, sweep, toJudge } from "./case.ts";
import { fits, INSERTS, NARROW, narrow, OTHER_HORSE, PLATE } from "./combination-bases.ts";

/** Which reading, or whose head, stands between a saddle and the setting that would fit. */
const judged = (changes: Changes, more: Partial<CaseToJudge>) => {
  const { answers, waitsFor } = judgeCase(toJudge(changes, more));
  return {
    id: answers.work.id,
    also: answers.work.also,
    rules: answers.work.because.map((one) => one.rule),
    waitsFor,
  };
};
const shut = (...shutBy: readonly string[]): Partial<CaseToJudge> => ({
  computedToday: faces(5.5),
  candidates: [candidate(16, "exchange", 5.5, { shutBy })],
});

describe("a setting that fits, shut by a reading that nobody took", () => {
  it.each([
    [PLATE, ["mounting-not-read"], "saddle.mounting.holes"],
    [PLATE, ["plate-not-seen-sound"], "platesAtHand[0].sound"],
    [PLATE, ["mounting-not-read", "plate-not-seen-sound"], "saddle.mounting.holes"],
    [INSERTS, ["position-not-read"], "saddle.inserts.positions"],
  ])("%#: %j waits for %s", (changes, shutBy, path) => {
    const { id, waitsFor } = judged(changes, shut(...shutBy));
    expect(id).toBe("measure-more");
    expect(waitsFor[0]).toMatch(new RegExp(`^${path.replace(/[[\].]/g, "\\$&")}`));
  });
  it("the plate's own place, not the first one's", () => {
    const second = {
      computedToday: faces(5.5),
      candidates: [candidate(16, "exchange", 5.5, { plate: 1, shutBy: ["plate-not-seen-sound"] })],
    };
    expect(judged(PLATE, second).waitsFor).toEqual(["platesAtHand[1].sound"]);
  });
  it("one reason that no reading takes away is enough: neither waited for nor spent", () => {
    for (const reasons of [
      ["mounting-differs"],
      ["mounting-differs", "plate-not-seen-sound"],
      ["mounting-differs", "cap-path"],
    ])
      expect(judged(PLATE, shut(...reasons)).id).toBe("other-saddle");
  });
});

describe("no head, and why", () => {
  const spent = { ...narrow, candidates: sweep("press", 2.4, { shutBy: ["cap-path"] }) };
  it("spent, and another saddle, bring nothing else with them", () => {
    expect(judged(NARROW, spent)).toMatchObject({ id: "spent", also: [] });
    expect(judged(NARROW, { ...narrow, candidates: sweep("press", 2.4, {}, 12) })).toMatchObject({
      id: "other-saddle",
      also: [],
    });
  });
  it("harm to another horse is told where a head that fits does it, and nowhere else", () => {
    const harms = (candidates: CaseToJudge["candidates"]) =>
      judged({ ...NARROW, ...OTHER_HORSE }, { ...narrow, candidates }).rules.includes("right-harms-another");
    expect(harms(fits(sweep("press", 2.4), faces(-9)))).toBe(true);
    // No head fits this horse, harmful or not.
    expect(harms(fits(sweep("press", 2.4, {}, 12), faces(-9)))).toBe(false);
    expect(harms(fits(sweep("press", 2.4, {}, 12), faces(0)))).toBe(false);
  });
  it("a head by heat is bent for every horse of the saddle, an exchange goes by horse", () => {
    const by = (way: "heat" | "exchange") =>
      judged({ ...NARROW, ...OTHER_HORSE }, { ...narrow, candidates: fits(sweep(way, 2.4), faces(-9)) }).id;
    expect([by("heat"), by("exchange") === "other-saddle"]).toEqual(["other-saddle", false]);
  });
});
