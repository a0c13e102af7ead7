import { describe, expect, it } from "vitest";
import { horseWords, mayRideSays, saddleWords, workWords } from "../../core/src/judge/answer-words.ts";
import { recordOf } from "../../core/src/judge/because.ts";
import { explainRule, isRuleId, ruleIds } from "../../core/src/judge/explain.ts";
import { CAUTIONS } from "../../core/src/judge/words/cautions.ts";
import { questions } from "../../core/src/survey/questions.ts";
import { HORSE_ANSWERS, SADDLE_ANSWERS, WORK_ANSWERS } from "../../core/src/terms/answers.ts";

const WORDS = [
  ...HORSE_ANSWERS.map(horseWords),
  ...SADDLE_ANSWERS.map(saddleWords),
  ...WORK_ANSWERS.map(workWords),
];
const IDS = [...HORSE_ANSWERS, ...SADDLE_ANSWERS, ...WORK_ANSWERS].filter(
  (id) => id.includes("-") && id !== "set-up",
);

describe("answers in words", () => {
  it("every id has a heading, a meaning, a next step and who, each one sentence or more", () => {
    for (const { heading, meaning, nextStep, who } of WORDS) {
      for (const said of [heading, meaning, nextStep, who]) expect(said).toMatch(/^[A-Z].*\.$/);
    }
    expect(new Set(WORDS.map((one) => one.heading)).size).toBe(WORDS.length);
  });
  it("no id, no promise, no diagnosis, no figure of press or heat", () => {
    const said = [...WORDS.flatMap((one) => Object.values(one)), ...CAUTIONS.map((one) => one.says)].join(
      "\n",
    );
    for (const id of IDS) expect(said).not.toMatch(new RegExp(`\\b${id}\\b`));
    expect(said).not.toMatch(/\bsafe|guarantee|\bkPa\b|\d\s*(kN|bar|°)|back pain/i);
  });
  it("nobody is told to ride on a stop, or on what was not looked at", () => {
    for (const horse of HORSE_ANSWERS) {
      for (const saddle of SADDLE_ANSWERS) {
        const open =
          (horse === "no-reason-seen" || horse === "come-back") &&
          ["sound-dressed", "sound-bare", "strip-before-altering"].includes(saddle);
        expect([horse, saddle, mayRideSays(horse, saddle).startsWith("No reason")]).toEqual([
          horse,
          saddle,
          open,
        ]);
      }
    }
  });
  it("stop signs stand before every other caution", () => {
    const stops = CAUTIONS.map((one) => one.stop);
    expect(stops.lastIndexOf(true)).toBeLessThan(stops.indexOf(false));
  });
});

describe("rules in words", () => {
  it("ids are unique", () => expect(new Set(ruleIds()).size).toBe(ruleIds().length));
  it.each(ruleIds())("%s: sentence, readings, source", (id) => {
    const text = explainRule(id);
    expect(isRuleId(id)).toBe(true);
    expect(text.split("\n")[0]).toBe(id);
    expect(text).toMatch(/source: (common practice, no source|published: |from memory|derived: )/);
  });
  it("a limit is explained with its numbers", () => {
    expect(explainRule("clearance-rider-up")).toContain("inside: 40 to 75 mm");
    expect(explainRule("clearance-girthed")).toContain("inside: from 45 mm");
    expect(explainRule("bridge")).toContain("inside: up to 5 mm");
  });
  it("an id that is not there is refused by name", () => {
    expect(isRuleId("no-such-rule")).toBe(false);
    expect(() => explainRule("no-such-rule")).toThrow("no-such-rule");
  });
  it("every reading that a rule names is a place of the case", () => {
    const paths = questions(1).map((question) => question.path);
    for (const id of ruleIds()) {
      for (const reading of recordOf(id).readings) {
        const place = reading.replace("horses[]", "horses[0]");
        const found =
          place === "horses[0]" ||
          paths.some(
            (path) => path === place || path.startsWith(`${place}.`) || path.startsWith(`${place}[`),
          );
        expect([id, reading, found]).toEqual([id, reading, true]);
      }
    }
  });
});
