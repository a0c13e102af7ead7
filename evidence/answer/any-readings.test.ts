import fc from "fast-check";
import { expect, test } from "vitest";
import { formsOf } from "../../core/src/answer/forms.ts";
import { type Answer, answer } from "../../core/src/answer.ts";
import { REFUSALS } from "../../core/src/engine/contact/problem.ts";
import type { Survey } from "../../core/src/survey/case.ts";
import { type Question, questions } from "../../core/src/survey/questions.ts";
import { withAnswer } from "../../core/src/survey/with-answer.ts";
import { propertySeed } from "../number/seed.ts";
import { notFinite, SEED, surveyOf } from "./examples.ts";

/*
 * Readings moved to anywhere in their allowed ranges, words to any word: the case is answered, or what it lacks is
 * named, and no figure is anything but a number. That an answer to such a case is a good one, this cannot tell.
 */
const seed = propertySeed("any readings");
const WHOLE = ["02-bought-without-history", "05-readings-in-inches", "09-alter-in-the-saddle"] as const;
const surveys = new Map(WHOLE.map((name) => [name, surveyOf(name)]));
const asked: readonly Question[] = questions(1).filter(
  ({ path, range, words }) =>
    (range !== undefined || words !== undefined) &&
    !/(alterations|platesAtHand|traces|hands)/.test(path) &&
    // A flag or a shut gate ends the road before most of it is walked; gates are enumerated elsewhere.
    !/\.(history|standing|moving|looked)\./.test(path),
);

/** One place of the case and how far along its range, or its list of words, it is put. */
const change = fc.tuple(fc.nat({ max: asked.length - 1 }), fc.double({ min: 0, max: 1, noNaN: true }));
const changes = fc.oneof(
  fc.array(change, { minLength: 1, maxLength: 4 }),
  fc.array(change, { minLength: 5, maxLength: 40 }),
);

function changed(survey: Survey, [which, part]: readonly [number, number]): Survey {
  const question = asked[which];
  if (question === undefined) return survey;
  const { path, range, words = [] } = question;
  const value =
    range === undefined
      ? words[Math.min(words.length - 1, Math.floor(part * words.length))]
      : range[0] + part * (range[1] - range[0]);
  return (value === undefined ? undefined : withAnswer(survey, path, value)) ?? survey;
}

const counts = new Map<string, number>();
const count = (what: string) => counts.set(what, (counts.get(what) ?? 0) + 1);

function expectSound(survey: Survey, found: Answer): void {
  expect(notFinite(found)).toEqual([]);
  const { lacking } = formsOf(survey, 0);
  const flagged = /^vet-before/.test(found.answers.horse.id);
  const rest = found.today?.rest;
  // No rest without a reason: a flag, a reading that is named, or a refusal.
  if (rest === undefined) expect(flagged || lacking.length > 0).toBe(true);
  else if (!rest.ok) expect(REFUSALS).toContain(rest.why);
  else {
    expect(rest.thirds.every(({ meanKPa, maxKPa }) => meanKPa >= 0 && maxKPa >= meanKPa)).toBe(true);
    expect(rest.thirds.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  }
  count(rest === undefined ? "no rest" : rest.ok ? "rests" : rest.why);
  count(`work: ${found.answers.work.id}`);
}

test("any readings in their ranges: an answer or what is lacking, never a crash, never a figure that is none", () => {
  fc.assert(
    fc.property(fc.constantFrom(...WHOLE), changes, (name, all) => {
      const odd = all.reduce(changed, surveys.get(name) ?? surveyOf(name));
      expectSound(odd, answer(odd, { horse: 0, seed: SEED }).next().value);
    }),
    { seed, numRuns: 30 },
  );
  console.log([...counts].map(([what, n]) => `${what} ${n}`).join(", "));
});

/** To the last: a case that tips or is pressed too far in most of its draws still ends with an answer. */
test("a case that hardly rests is answered to its last draw", () => {
  const tall = [
    ["saddle.bearing.strapNear", -150],
    ["saddle.bearing.strapOff", -150],
    ["rider.massDressed", 115],
  ] as const;
  const odd = tall.reduce(
    (survey, [path, value]) => withAnswer(survey, path, value) ?? survey,
    surveyOf("09-alter-in-the-saddle"),
  );
  const road = answer(odd, { horse: 0, seed: SEED });
  let step = road.next();
  while (!step.done) step = road.next();
  console.log(`rests in ${step.value.draws.resting.today} of the draws: ${step.value.answers.work.id}`);
  expect(step.value.draws).toMatchObject({ done: true });
  expect(notFinite(step.value)).toEqual([]);
});
