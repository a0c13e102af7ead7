import { describe, expect, test } from "vitest";
import { DRAWS } from "../../core/src/answer/draws.ts";
import type { Measure } from "../../core/src/engine/drawing.ts";
import { documentOf } from "../../core/src/papers.ts";
import { WORK_ANSWERS } from "../../core/src/terms/answers.ts";
import { answered, EXPECTED, NAMES, notFinite, RIDES, SEED, surveyOf } from "./examples.ts";

/*
 * Every example through the whole road, against what a fitter would answer (`expected.json`). The table is our own
 * judgement by common practice; no outside source answers these invented cases.
 */
const ANSWERS = RIDES.map(({ name, horse }) => ({ name, horse, ...answered(surveyOf(name), horse) }));
const idsOf = ({ answers: { horse, saddle, work } }: (typeof ANSWERS)[number]["last"]) => ({
  horse: horse.id,
  saddle: saddle.id,
  work: work.id,
  also: work.also,
});
/** As wide as letters of half their height. */
const measure: Measure = (words, _face, _bold, size) => words.length * 0.5 * size;

describe.each(ANSWERS)("$name, horse $horse", ({ name, horse, first, last }) => {
  test("answers what a fitter would", () => {
    const row = EXPECTED.find((one) => one.case === name && one.horse === horse);
    expect(idsOf(last)).toEqual(row?.answers);
  });
  test("the first answer, before its draws, says the same as the last", () => {
    expect(idsOf(first)).toEqual(idsOf(last));
    expect(first.answers.setting).toEqual(last.answers.setting);
    expect(first.draws.done).toBe(first.draws.of === 0);
    expect(last.draws).toMatchObject({ done: true, count: last.draws.of });
    expect([0, DRAWS]).toContain(last.draws.of);
  });
  test("what is shown of a change is shown of the setting that was answered", () => {
    const { setting } = last.answers;
    expect(last.chosen?.changeMm).toBe(setting?.changeMm);
    expect(last.follows?.moved.spreadMm ?? 0).toBeCloseTo(setting?.changeMm ?? 0, 9);
    expect(last.answers.limitsAfter.length > 0).toBe(setting !== undefined);
  });
  test("every figure is finite, on the answer and on its sheet", () => {
    expect(notFinite(last)).toEqual([]);
    const sheet = documentOf("sheet", surveyOf(name), last, measure);
    expect(notFinite(sheet)).toEqual([]);
    expect(JSON.stringify(sheet)).not.toMatch(/\bNaN\b|\bundefined\b|Infinity/);
  });
  test("on a horse flag no fit is worked out, else the head is", () => {
    const flagged = ["vet-before-altering", "vet-before-riding"].includes(last.answers.horse.id);
    expect(last.today === undefined).toBe(flagged);
    if (flagged) expect([last.settings, last.answers.limitsToday, last.wanted]).toEqual([[], [], undefined]);
  });
});

describe("the examples together", () => {
  test("every row of the table is answered, and no more", () => {
    const key = (one: { horse: number }, name: string) => `${name} ${one.horse}`;
    expect(ANSWERS.map((one) => key(one, one.name)).sort()).toEqual(
      EXPECTED.map((one) => key(one, one.case)).sort(),
    );
  });
  test("they show at least eight different work answers, all of them in the list of ids", () => {
    const found = new Set(ANSWERS.map(({ last }) => last.answers.work.id));
    console.log(`${NAMES.length} examples, ${found.size} different work answers: ${[...found].join(", ")}`);
    expect(found.size).toBeGreaterThanOrEqual(8);
    for (const id of found) expect(WORK_ANSWERS).toContain(id);
  });
  test("the same seed gives the same answer, digit for digit", () => {
    const name = "09-alter-in-the-saddle";
    const before = ANSWERS.find((one) => one.name === name)?.last;
    expect(JSON.stringify(answered(surveyOf(name), 0, SEED).last)).toBe(JSON.stringify(before));
  });
});
