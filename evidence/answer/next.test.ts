import { describe, expect, test } from "vitest";
import { nextFor } from "../../core/src/answer/next.ts";
import { roadOf, toJudge } from "../../core/src/answer/road.ts";
import { judgeCase } from "../../core/src/judge/judge-case.ts";
import { valuesToTry } from "../../core/src/judge/next-reading.ts";
import type { Survey } from "../../core/src/survey/case.ts";
import { questions } from "../../core/src/survey/questions.ts";
import { withAnswer } from "../../core/src/survey/with-answer.ts";
import { SEED, surveyOf } from "./examples.ts";

/*
 * The one next reading, held against answering the whole case anew with each of its values: the road looks at them
 * coarsely and on doubts looked at before, which must not change what the reading leads to.
 */
function without(name: string, places: readonly string[]): Survey {
  return places.reduce((survey, path) => {
    const less = withAnswer(survey, path, "not-looked") ?? withAnswer(survey, path, "unknown");
    if (less === undefined) throw new Error(`${path} cannot be left out`);
    return less;
  }, surveyOf(name));
}

const judgedAnew = (survey: Survey) => judgeCase(toJudge(roadOf(survey, 0, SEED)));
function nextOf(survey: Survey) {
  const road = roadOf(survey, 0, SEED);
  const { answers, waitsFor } = judgeCase(toJudge(road));
  return { work: answers.work.id, waitsFor, next: nextFor(road, waitsFor, SEED) };
}

describe("the next reading splits the answers", () => {
  test.each([
    ["09-alter-in-the-saddle", ["horses[0].girthed.handOff"]],
    ["08-nothing-to-do", ["horses[0].riderUp.clearanceTop"]],
    ["08-nothing-to-do", ["saddle.bearing.mid.near.faceAngle"]],
    ["09-alter-in-the-saddle", ["saddle.build.metal"]],
  ])("%s without %j", (name, places) => {
    const survey = without(name, places);
    const { work, waitsFor, next } = nextOf(survey);
    expect(work).toBe("measure-more");
    expect(waitsFor.length).toBeGreaterThan(0);
    const question = questions(1).find(({ path }) => path === next?.path);
    if (question === undefined) throw new Error(`${next?.path} is no question`);
    const anew = valuesToTry(question).map((value) => {
      const more = withAnswer(survey, question.path, value);
      return more === undefined ? "measure-more" : judgedAnew(more).answers.work.id;
    });
    console.log(`${name} without ${places}: ${next?.path} leads to ${anew.join(", ")}`);
    expect(new Set(anew)).toEqual(new Set(next?.leadsTo));
    expect(new Set(anew).size).toBeGreaterThan(1);
  });
  // Five values from end to end of a wide range all lead elsewhere than the few that a hand would read.
  test.each([
    ["09-alter-in-the-saddle", "horses[0].template.nearTip"],
    ["05-readings-in-inches", "saddle.mounting.pitch"],
  ])("%s without %s: it is named all the same", (name, path) => {
    const { work, next } = nextOf(without(name, [path]));
    expect([work, next?.path]).toEqual(["measure-more", path]);
  });
  test("where nothing is waited for, nothing is asked", () => {
    expect(nextOf(surveyOf("08-nothing-to-do")).next).toBeUndefined();
    expect(nextOf(surveyOf("01-sore-to-the-touch")).next).toBeUndefined();
  });
  test("a case half empty is asked for what comes first in the order of the work", () => {
    const { next } = nextOf(surveyOf("07-half-empty"));
    const order = questions(1).map(({ path }) => path);
    const { waitsFor } = judgedAnew(surveyOf("07-half-empty"));
    expect(next?.path.startsWith("horses[0].")).toBe(true);
    expect(order.indexOf(next?.path ?? "")).toBeGreaterThanOrEqual(0);
    expect(waitsFor.some((place) => next?.path.startsWith(place))).toBe(true);
  });
});
