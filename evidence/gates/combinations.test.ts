import { describe, expect, it } from "vitest";
import { recordOf } from "../../core/src/judge/because.ts";
import type { CaseToJudge } from "../../core/src/judge/input.ts";
import { judgeCase } from "../../core/src/judge/judge-case.ts";
import { type Changes, faces, figure, toJudge } from "./case.ts";
import { NARROW, narrow, PLATE, plates } from "./combination-bases.ts";
import { BEFORE, ORDERS } from "./combination-orders.ts";
import { COMBINATIONS } from "./combination-rows.ts";

const answersOf = (changes: Changes, more: Partial<CaseToJudge>) => judgeCase(toJudge(changes, more));

describe.each([
  ["the trade's combinations", COMBINATIONS],
  ["orders that would be unsafe", ORDERS],
  ["what comes before a head, or before nothing", BEFORE],
] as const)("%s", (_name, rows) => {
  it.each(rows)("%s: %s", (_finding, rule, changes, more, expected) => {
    const { answers, waitsFor } = answersOf(changes, more);
    const { horse, saddle, work, permitted } = answers;
    const said = [...horse.because, ...saddle.because, ...work.because].map((one) => one.rule);
    expect(recordOf(rule).id).toBe(rule);
    expect(said).toContain(rule);
    expect(work.id).toBe(expected.work);
    if (expected.horse) expect(horse.id).toBe(expected.horse);
    if (expected.saddle) expect(saddle.id).toBe(expected.saddle);
    if (expected.also) expect(work.also).toEqual(expected.also);
    expect(permitted.filter((act) => expected.shut?.includes(act))).toEqual([]);
    if (work.id === "measure-more") expect(waitsFor.length).toBeGreaterThan(0);
    // A stop stands before every other line, and nothing is shown of a fit on a flag.
    const cautions = [...saddle.cautions, ...horse.cautions];
    if (["out-for-good", "out-till-repaired", "strip-before-riding"].includes(saddle.id))
      expect(saddle.cautions[0]).toContain("STOP");
    if (horse.id === "vet-before-riding") expect(horse.cautions[0]).toContain("STOP");
    if (horse.id.startsWith("vet-"))
      expect([answers.limitsToday, answers.limitsAfter, answers.setting, cautions.length > 0]).toEqual([
        [],
        [],
        undefined,
        true,
      ]);
  });
});

describe("the base that the rows change", () => {
  it("narrow, young, sound and clean is altered dressed; all right is nothing; a plate fits", () => {
    expect(answersOf(NARROW, narrow).answers.work.id).toBe("alter-dressed");
    expect(answersOf({}, {}).answers.work.id).toBe("nothing");
    expect(answersOf(PLATE, plates).answers.work.id).toBe("change-plate");
  });
});

describe("said beside the answer", () => {
  const cautionsOf = (changes: Changes, more: Partial<CaseToJudge> = {}) =>
    answersOf(changes, more).cautionIds;
  it("a hollow over 10 mm under a head that is right: back in six to eight weeks, not in six months", () => {
    const { answers, cautionIds } = answersOf({ "horses[0].standing.hollowNear": 14 }, {});
    expect([answers.work.id, cautionIds.includes("work-hollow")]).toEqual(["nothing", true]);
    expect(answers.work.nextStep).toContain("six to eight weeks");
  });
  it("a horse felt in part, and flagged all the same: what was not felt is said too", () => {
    const lame = { "horses[0].moving.uneven": "yes" };
    expect(cautionsOf({ ...lame, "horses[0].hands.loin": undefined })).toContain("horse-not-looked");
    expect(cautionsOf(lame)).not.toContain("horse-not-looked");
  });
  it("nobody weighed or measured the horse: nothing is said of the load, in words", () => {
    const unknown = { "horses[0].mass": "not-looked", "horses[0].body.girth": "not-looked" };
    expect(cautionsOf(unknown)).toContain("work-load-not-known");
    expect(cautionsOf({ "horses[0].mass": "not-looked" })).not.toContain("work-load-not-known");
    expect(cautionsOf({})).not.toContain("work-load-not-known");
  });
  it("a side of the horse more than 10 mm larger: a vet or physiotherapist before a one-sided fill", () => {
    const more = { computedToday: [...faces(0), figure("horse-sides-width", "", 12)] };
    const { answers, cautionIds } = answersOf({}, more);
    expect(cautionIds).toContain("work-horse-sides");
    expect(answers.work.because.map((one) => one.rule)).toContain("horse-sides-width");
  });
  it("a panel filled on a saddle that others wear", () => {
    const changes = { "horses[0].girthed.bridgeNear": 9, "horses[0].girthed.bridgeOff": 9 };
    expect(cautionsOf({ ...changes, "saddle.standing.othersWearIt": "yes" })).toContain("work-shared-panel");
    expect(cautionsOf(changes)).not.toContain("work-shared-panel");
  });
  it("a polymer head whose warmth nobody looked at", () => {
    expect(cautionsOf({ ...PLATE, "saddle.build.treeTemperature": "not-looked" }, plates)).toContain(
      "work-polymer-cold",
    );
    expect(cautionsOf(PLATE, plates)).not.toContain("work-polymer-cold");
  });
});
