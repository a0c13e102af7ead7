import { describe, expect, it } from "vitest";
import type { CaseToJudge } from "../../core/src/judge/input.ts";
import { judgeCase } from "../../core/src/judge/judge-case.ts";
import { type Changes, toJudge } from "./case.ts";
import { BARE, NARROW, narrow, WARM_BAR } from "./combination-bases.ts";

/** What goes with an answer in this case: when to come back, what creeps back, and nothing of the fit of a broken tree. */
const judged = (changes: Changes, more: Partial<CaseToJudge> = {}) => judgeCase(toJudge(changes, more));
const nextOf = (changes: Changes): string => judged(changes).answers.horse.nextStep;
const OFF = { "horses[0].history.offWorkWeeks": 10, "horses[0].history.backInWorkWeeks": 1 };
const GROWING = { "horses[0].history.growing": "yes" };
const MILD = { "horses[0].hands.loin.off": { grade: 1, twice: "yes" } };

describe("come back another day: what for", () => {
  it("back in work, changing, or a place that reacted, which comes before the others", () => {
    expect(nextOf(OFF)).toContain("back into work");
    expect(nextOf(GROWING)).toContain("ask a vet or physiotherapist about a hollow");
    expect(nextOf({ ...OFF, ...GROWING })).toContain("back into work");
    expect(nextOf(MILD)).toContain("watch any place that reacted");
    expect(nextOf({ ...MILD, ...GROWING })).toContain("watch any place that reacted");
  });
  it("a vet's answer keeps its own next step", () => {
    expect(nextOf({ ...GROWING, "horses[0].moving.uneven": "yes" })).toContain("Ring the vet");
    expect(nextOf({})).toContain("Look again before each ride");
  });
});

describe("polymer with a bar creeps back", () => {
  const says = (changes: Changes, more?: Partial<CaseToJudge>) =>
    judged(changes, more).cautionIds.includes("work-polymer-creep");
  it("told with every press of it, also where somebody else presses, and with no other head", () => {
    expect(says({ ...NARROW, ...WARM_BAR }, narrow)).toBe(true);
    expect(says({ ...NARROW, ...WARM_BAR, ...BARE }, narrow)).toBe(true);
    expect(says({ ...NARROW, ...WARM_BAR, "worker.press": "no" }, narrow)).toBe(true);
    expect(says(NARROW, narrow)).toBe(false);
    expect(says(WARM_BAR)).toBe(false);
  });
});

describe("springs along the rails", () => {
  const bridge = { "horses[0].girthed.bridgeNear": 8, "horses[0].girthed.bridgeOff": 8 };
  const rules = (changes: Changes) => judged(changes).answers.work.because.map(({ rule }) => rule);
  it("are told first where a bridge is, and open nothing", () => {
    expect(rules({ ...bridge, "saddle.build.springs": "along-rails" })[0]).toBe("fit-springs");
    expect(rules({ "saddle.build.springs": "along-rails" })).not.toContain("fit-springs");
    for (const springs of ["none", "unknown"])
      expect(rules({ ...bridge, "saddle.build.springs": springs })).not.toContain("fit-springs");
    const permitted = (springs: string) =>
      judged({ ...NARROW, "saddle.build.springs": springs }, narrow).answers.permitted;
    expect(permitted("along-rails")).toEqual(permitted("none"));
    expect(permitted("unknown")).toEqual(permitted("none"));
  });
});

describe("a broken tree", () => {
  it("is told as broken; nobody asks how it fits", () => {
    const { work, setting } = judged({ ...NARROW, "saddle.looked.whiteLine": "yes" }, narrow).answers;
    expect(work.because.map(({ rule }) => rule)).toEqual(["saddle-cracked"]);
    expect(setting).toBeUndefined();
    expect(judged(NARROW, narrow).answers.work.because.length).toBeGreaterThan(1);
  });
});
