import { expect, it } from "vitest";
import { letterDataOf } from "../../core/src/papers/letter.ts";
import { ENGLISH } from "../../core/src/report/tongue.ts";
import { firstAnswer, RIDES, surveyOf } from "../answer/examples.ts";

/*
 * What an owner could read as leave to ride. The sentences were mended after somebody who knows nothing of saddle making had read four
 * letters; what this cannot see: another reader.
 */
const letters = RIDES.map(({ name, horse }) => {
  const survey = surveyOf(name);
  const first = firstAnswer(survey, horse);
  return { name, horse, answers: first.answers, letter: letterDataOf(survey, first, ENGLISH) };
});
const STOPPED = ["strip-before-riding", "out-till-repaired", "out-for-good"];

it.each(letters)("$name, horse $horse", ({ answers, letter }) => {
  const all = JSON.stringify(letter);
  const isVet = answers.horse.id.startsWith("vet-");
  if (isVet || STOPPED.includes(answers.saddle.id)) {
    expect(letter.mayIRide).toMatch(/^(No\b|Not before)/);
    expect(all).not.toMatch(/short rides|rides short|ridden meanwhile|go easy|walk and trot only/);
  }
  if (isVet) expect(letter.willBeDone[0]).toMatch(/^You ring the vet/);
  // Nothing found is never the whole sentence: how it fits stands beside it, or that it was not judged.
  if (/^Nothing found/.test(letter.saddle.says))
    expect(letter.saddle.says).toMatch(/How it fits (is told|was not)/);
  if (STOPPED.includes(answers.saddle.id)) expect(letter.nextVisit).not.toContain("Sooner");
  expect(all).not.toContain("hundredths");
  expect(letter.limits.join(" ")).toContain("the tree is the frame inside the saddle");
});
