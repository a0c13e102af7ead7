import { expect, test } from "vitest";
import { withAnswer } from "../../core/src/survey/with-answer.ts";
import { surveyOf } from "../answer/examples.ts";

const survey = surveyOf("09-alter-in-the-saddle");

test("one reading is put in its place, and nothing else is touched", () => {
  const put = withAnswer(survey, "saddle.head.spreadTips", 181);
  expect(put?.saddle.head.spreadTips).toMatchObject({ value: 181 });
  expect(put?.horses).toEqual(survey.horses);
  expect(withAnswer(survey, "horses[0].onlyThisHorse", "yes")?.horses[0]?.onlyThisHorse).toBe("yes");
});

test("a value that the place does not allow is no answer", () => {
  expect(withAnswer(survey, "saddle.head.spreadTips", 9999)).toBeUndefined();
  expect(withAnswer(survey, "saddle.head.nowhere", 1)).toBeUndefined();
});

test("one reading makes no item of a list: a half-made position or horse would stand for one that was read", () => {
  expect(survey.saddle.inserts.positions).toHaveLength(0);
  expect(withAnswer(survey, "saddle.inserts.positions[0].spreadTips", 230)).toBeUndefined();
  expect(withAnswer(survey, `horses[${survey.horses.length}].onlyThisHorse`, "yes")).toBeUndefined();
});
