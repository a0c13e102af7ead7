import { describe, expect, test } from "vitest";
import { type Road, roadOf, roadWith, toJudge } from "../../core/src/answer/road.ts";
import { judgeCase } from "../../core/src/judge/judge-case.ts";
import { questions } from "../../core/src/survey/questions.ts";
import { withAnswer } from "../../core/src/survey/with-answer.ts";
import { SEED, surveyOf } from "./examples.ts";

/*
 * One reading taken away from a case that is whole: nothing more is permitted, no limit becomes inside for want of its
 * reading, and where the work answer changes it asks for something or sends the saddle to be looked at.
 */
const NOT_KNOWN = ["unknown", "not-asked", "not-looked", "not-told", "not-said"];
const taken = questions(1).flatMap((question) => {
  const word =
    question.kind === "measured" ? "not-looked" : question.words?.find((one) => NOT_KNOWN.includes(one));
  return word === undefined || question.after !== undefined ? [] : [{ path: question.path, word }];
});
const answersOf = (road: Road) => judgeCase(toJudge(road)).answers;
const keyOf = ({ rule, at }: { readonly rule: string; readonly at: string }) => `${rule}, ${at}`;

describe.each(["09-alter-in-the-saddle"])("%s, one reading less", (name) => {
  const survey = surveyOf(name);
  const road = roadOf(survey, 0, SEED);
  const before = answersOf(road);
  const inside = new Set(before.limitsToday.filter(({ outcome }) => outcome === "inside").map(keyOf));
  const without = taken.flatMap(({ path, word }) => {
    const less = withAnswer(survey, path, word);
    if (less === undefined) return [];
    return [{ path, answers: answersOf(roadWith(road, less, path, SEED)) }];
  });
  test(`${without.length} readings and questions in turn: nothing more is permitted`, () => {
    expect(without.length).toBeGreaterThan(150);
    const more = without.flatMap(({ path, answers }) =>
      answers.permitted.filter((act) => !before.permitted.includes(act)).map((act) => `${path}: ${act}`),
    );
    expect(more).toEqual([]);
  });
  test("no limit is inside for want of a reading", () => {
    const claimed = without.flatMap(({ path, answers }) =>
      answers.limitsToday
        .filter(({ outcome, value }) => outcome === "inside" && value === undefined)
        .map((limit) => `${path}: ${keyOf(limit)}`),
    );
    expect(claimed).toEqual([]);
    // A figure that was read stays what it was, or is gone.
    const turned = without.flatMap(({ path, answers }) =>
      answers.limitsToday
        .filter((limit) => limit.outcome === "inside" && !inside.has(keyOf(limit)))
        .map((limit) => `${path}: ${keyOf(limit)}`),
    );
    expect(turned.filter((one) => !STANDS_IN.test(one))).toEqual([]);
  });
  test("the work answer stays, or asks, or looks further", () => {
    const other = new Map<string, string[]>();
    for (const { path, answers } of without)
      if (answers.work.id !== before.work.id)
        other.set(answers.work.id, [...(other.get(answers.work.id) ?? []), path]);
    for (const [id, paths] of other)
      console.log(`${name}: ${id} without any one of ${paths.length} readings`);
    const bolder = [...other.keys()].filter((id) => !["measure-more", "strip-first"].includes(id));
    expect(bolder).toEqual([]);
  });
});

/** Without the feelers the front section and its spread are computed from curve and protractor, and may be inside there. */
const STANDS_IN = /^horses\[0\]\.template\.\w+: (face-front|spread-wanted), /;
