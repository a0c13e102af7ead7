import { describe, expect, it } from "vitest";
import { mayRideSays } from "../../core/src/judge/answer-words.ts";
import { bodyAdvice } from "../../core/src/judge/body-advice.ts";
import { explainRule, isRuleId, ruleIds } from "../../core/src/judge/explain.ts";
import { findingsOf } from "../../core/src/judge/findings.ts";
import { horseShutsFit } from "../../core/src/judge/horse-flag.ts";
import { judgeCase } from "../../core/src/judge/judge-case.ts";
import { measureLimits } from "../../core/src/judge/measure.ts";
import { type AnswerWith, nextReading, valuesToTry } from "../../core/src/judge/next-reading.ts";
import type { WorkAnswer } from "../../core/src/terms/answers.ts";
import { type Changes, surveyWith, toJudge } from "./case.ts";

/* Parts of the answers that the long tests pass through and do not tell apart. */

const idsOf = (because: readonly { readonly rule: string }[]): readonly string[] =>
  because.map(({ rule }) => rule);

describe("a horse that is not there", () => {
  const survey = surveyWith({});
  it.each([
    ["findings", () => findingsOf(survey, 7)],
    ["limits", () => measureLimits(survey, 7)],
    ["the flag", () => horseShutsFit(survey, 7)],
  ])("%s: is told by its number", (_name, act) => expect(act).toThrow("no horse 7 in this case"));
  it("nothing is advised about its body", () => expect(bodyAdvice(survey, 7)).toBeUndefined());
});

describe("the horse's flag", () => {
  it.each([
    [{}, false],
    [{ "horses[0].moving.uneven": "yes" }, true],
  ])("%j shuts the fit: %s", (changes: Changes, shuts) =>
    expect(horseShutsFit(surveyWith(changes), 0)).toBe(shuts),
  );
});

describe("body advice beside the answers", () => {
  const rulesAt = (condition: unknown) =>
    idsOf(bodyAdvice(surveyWith({ "horses[0].body.condition": condition }), 0)?.because ?? []);
  it.each([
    ["3", true],
    ["4", false],
    ["5", false],
    ["6", false],
    ["7", true],
  ])("condition %s of 9 is outside the usual: %s", (condition, isOutside) =>
    expect(rulesAt(condition).includes("condition-outside")).toBe(isOutside),
  );
  it("a condition that nobody graded is not outside", () =>
    expect(rulesAt("not-looked")).not.toContain("condition-outside"));
  it("a trace of another body is told by its place, with what changed", () => {
    const survey = surveyWith({
      "horses[0].body.condition": "6",
      "horses[0].traces[1].conditionThen": "4",
    });
    const advice = bodyAdvice(survey, 0);
    expect(advice?.voidTraces.map(({ index }) => index)).toEqual([1]);
    expect(advice?.voidTraces[0]?.trace).toBe(survey.horses[0]?.traces[1]);
    expect(idsOf(advice?.because ?? [])).toContain("trace-void");
    expect(idsOf(bodyAdvice(surveyWith({}), 0)?.because ?? [])).not.toContain("trace-void");
  });
});

describe("hands that did not go over every zone", () => {
  const cautionsOf = (changes: Changes) => judgeCase(toJudge(changes)).cautionIds;
  it("is said where the horse was examined all the same", () => {
    expect(cautionsOf({ "horses[0].hands.loin": undefined })).toContain("horse-not-looked");
    expect(cautionsOf({})).not.toContain("horse-not-looked");
  });
});

describe("what is ridden", () => {
  it("a saddle that is evidence is not, though horse and saddle are sound", () => {
    expect(mayRideSays("no-reason-seen", "sound-bare", ["flock"])).toMatch(/^No: not in this saddle, which/);
    expect(mayRideSays("no-reason-seen", "sound-bare", ["ride"])).toMatch(/^No reason was seen/);
    expect(mayRideSays("no-reason-seen", "sound-bare")).toMatch(/^No reason was seen/);
  });
});

describe("where the horse is flagged", () => {
  it("no limit is judged, no head is told, and nothing is waited for but what the gates want", () => {
    const { answers, waitsFor } = judgeCase(toJudge({ "horses[0].moving.uneven": "yes" }));
    expect(answers.limitsToday).toEqual([]);
    expect(answers.limitsAfter).toEqual([]);
    expect(answers.setting).toBeUndefined();
    expect(answers.work.also).toEqual([]);
    expect(waitsFor).toEqual([]);
    expect(answers.work.because.length).toBeGreaterThan(0);
  });
});

describe("a rule in full", () => {
  it("every rule and every limit has an id that is known; another is not", () => {
    expect(ruleIds().length).toBeGreaterThan(100);
    expect(isRuleId("rock")).toBe(true);
    expect(isRuleId("no-such-rule")).toBe(false);
  });
  it("a rule has three parts below its id, a limit three more, each with how it is judged", () => {
    expect(explainRule("trace-void").split("\n").length).toBe(4);
    for (const id of ["rock", "clearance-girthed"].filter(isRuleId))
      expect(explainRule(id)).toMatch(/\njudged: (for a press|by the best estimate|on doubt)/);
  });
});

describe("the one next reading, by how it splits", () => {
  const survey = surveyWith({});
  const ROCK = "horses[0].girthed.rock";
  const NEAR = "horses[0].girthed.bridgeNear";
  /** One answer for each of the five values that are tried. */
  const inTurn = (byPath: { readonly [path: string]: readonly WorkAnswer[] }): AnswerWith => {
    const at = new Map<string, number>();
    return (path) => {
      const turn = at.get(path) ?? 0;
      at.set(path, turn + 1);
      return byPath[path]?.[turn] ?? byPath[path]?.at(-1) ?? "nothing";
    };
  };
  it("three answers of five split better than two, whichever comes first in the work", () => {
    const even = ["nothing", "panel", "set-up", "nothing", "panel"] as const;
    const uneven = ["nothing", "nothing", "nothing", "nothing", "panel"] as const;
    expect(nextReading(survey, [ROCK, NEAR], inTurn({ [ROCK]: even, [NEAR]: uneven }))?.path).toBe(ROCK);
    expect(nextReading(survey, [ROCK, NEAR], inTurn({ [ROCK]: uneven, [NEAR]: even }))?.path).toBe(NEAR);
  });
  it("no more than five words are tried, from the first", () => {
    expect(valuesToTry({ words: ["a", "b", "c", "d", "e", "f", "g"] })).toEqual(["a", "b", "c", "d", "e"]);
    expect(valuesToTry({ range: [-10, 30] })).toEqual([-10, 0, 10, 20, 30]);
  });
  it("under a group that is waited for, a word that stands is not asked again, and one that nobody gave is", () => {
    const tried = (changes: Changes): readonly string[] => {
      const paths = new Set<string>();
      nextReading(surveyWith(changes), ["saddle.past"], (path) => {
        paths.add(path);
        return "nothing";
      });
      return [...paths];
    };
    const standing = tried({});
    const open = tried({ "saddle.past.storedDamp": "not-asked" });
    expect(open.filter((path) => !standing.includes(path))).toEqual(["saddle.past.storedDamp"]);
    for (const path of standing) expect(path).toMatch(/^saddle\.past[.[]/);
  });
  it("a place that only ends like one that is waited for is not under it", () => {
    const paths = new Set<string>();
    nextReading(survey, ["saddle.line"], (path) => {
      paths.add(path);
      return "nothing";
    });
    expect([...paths]).toEqual([]);
  });
  it("of several places that are waited for, the questions of each are tried", () => {
    const paths = new Set<string>();
    nextReading(survey, ["horses[0].template", "horses[0].girthed"], (path) => {
      paths.add(path);
      return "nothing";
    });
    const rooms = new Set([...paths].map((path) => path.split(".")[1]));
    expect([...rooms].sort()).toEqual(["girthed", "template"]);
  });
});
