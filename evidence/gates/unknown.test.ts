import { describe, expect, it } from "vitest";
import { judgeCase } from "../../core/src/judge/judge-case.ts";
import { CASE_FORMAT, CASE_VERSION, caseSchema, type Survey } from "../../core/src/survey/case.ts";
import { type Question, questions } from "../../core/src/survey/questions.ts";
import { ACTS } from "../../core/src/terms/answers.ts";
import { type Changes, faces, sweep, toJudge } from "./case.ts";

const NOT_KNOWN = ["unknown", "not-asked", "not-looked", "not-told", "not-said"];

/** How a question is typed when nobody knows; undefined for names, dates and lists. */
function notKnown(question: Question): string | undefined {
  if (question.kind === "measured") return "not-looked";
  return question.words?.find((word) => NOT_KNOWN.includes(word));
}

const NARROW: Changes = {
  "horses[0].template": { nearTop: 0, nearMiddle: -1.5, nearTip: -3, offTop: 0, offMiddle: -1.5, offTip: -3 },
  "horses[0].girthed.handNear": "tight-at-tip",
  "horses[0].girthed.handOff": "tight-at-tip",
};
const narrow = {
  computedToday: faces(5.5),
  candidates: sweep("press", 2.4),
  fillMm: { near: 11, off: 11 },
};

describe("one thing fewer known, each of them in turn", () => {
  const before = judgeCase(toJudge(NARROW, narrow)).answers;
  const asked = questions(1).filter(
    (question) => notKnown(question) !== undefined && !question.path.startsWith("platesAtHand"),
  );
  it(`${asked.length} readings and questions: nothing more is permitted, and the work answer stays or asks for something`, () => {
    expect(before.work.id).toBe("alter-dressed");
    const other = new Map<string, string[]>();
    for (const question of asked) {
      if (question.after !== undefined) continue;
      const judged = judgeCase(toJudge({ ...NARROW, [question.path]: notKnown(question) }, narrow));
      const { permitted, work } = judged.answers;
      expect([question.path, permitted.filter((act) => !before.permitted.includes(act))]).toEqual([
        question.path,
        [],
      ]);
      if (work.id === "measure-more")
        expect([question.path, judged.waitsFor.length > 0]).toEqual([question.path, true]);
      if (work.id !== before.work.id) other.set(work.id, [...(other.get(work.id) ?? []), question.path]);
    }
    expect([...other.keys()].sort()).toEqual(["measure-more", "strip-first"]);
    expect(other.get("measure-more")).toContain("horses[0].template.nearTip");
    expect(other.get("strip-first")).toContain("saddle.past.age");
  });
  it("nothing known at all: nothing is permitted but to look", () => {
    const empty = {
      ...toJudge({}),
      survey: blank(),
      computedToday: [],
      candidates: [],
      lacking: ["horses[0].traces"],
    };
    const { answers, waitsFor } = judgeCase(empty);
    expect([answers.horse.id, answers.saddle.id, answers.work.id]).toEqual([
      "not-examined",
      "not-looked",
      "measure-more",
    ]);
    expect(ACTS.filter((act) => answers.permitted.includes(act))).toEqual([]);
    expect(waitsFor.length).toBeGreaterThan(10);
  });
});

/** One horse and one saddle with a name, and nothing else typed. */
const blank = (): Survey =>
  caseSchema.parse({
    format: CASE_FORMAT,
    version: CASE_VERSION,
    title: "blank",
    visit: { date: "2031-04-12" },
    saddle: { name: "a saddle" },
    horses: [{ name: "a horse" }],
  });
