import { readdirSync, readFileSync } from "node:fs";
import { z } from "zod";
import { type Answer, answer } from "../../core/src/answer.ts";
import type { Survey } from "../../core/src/survey/case.ts";
import { readCase, readCaseValue } from "../../core/src/survey/read-case.ts";

const folder = new URL("../../examples/cases/", import.meta.url);

/** Names of all example cases, without their ending, in the order of their numbers. */
export const NAMES: readonly string[] = readdirSync(folder)
  .filter((name) => name.endsWith(".json"))
  .map((name) => name.replace(/\.json$/, ""))
  .sort();

const textOf = (name: string): string => readFileSync(new URL(`${name}.json`, folder), "utf8");

/** An example as it stands in its file. */
export const fileOf = (name: string): unknown => JSON.parse(textOf(name));

export function surveyOf(name: string): Survey {
  const read = readCase(textOf(name));
  if (!read.ok) throw new Error(`${name}: ${read.problems.map(({ where }) => where).join(", ")}`);
  return read.survey;
}

/** A case that was made up out of an example. */
export function surveyFrom(file: unknown): Survey {
  const read = readCaseValue(file);
  if (!read.ok)
    throw new Error(
      read.problems.map(({ where, read: got, allowed }) => `${where}: ${got}, ${allowed}`).join("; "),
    );
  return read.survey;
}

/** Every horse of every example. */
export const RIDES: readonly { readonly name: string; readonly horse: number }[] = NAMES.flatMap((name) =>
  surveyOf(name).horses.map((_, horse) => ({ name, horse })),
);

export const SEED = 1;

/** The first answer, at the means, and the last, with all its draws. */
export function answered(
  survey: Survey,
  horse: number,
  seed = SEED,
): { readonly first: Answer; readonly last: Answer } {
  const road = answer(survey, { horse, seed });
  const begun = road.next();
  let step = begun;
  while (!step.done) step = road.next();
  return { first: begun.value, last: step.value };
}

/** The answer at the means, before any draw but those of the first look. */
export const firstAnswer = (survey: Survey, horse: number, seed = SEED): Answer =>
  answer(survey, { horse, seed }).next().value;

const row = z.strictObject({
  case: z.string(),
  horse: z.int(),
  answers: z.strictObject({
    horse: z.string(),
    saddle: z.string(),
    work: z.string(),
    also: z.array(z.string()),
  }),
  why: z.string().min(40),
});

/** What a fitter who looked through each example would answer, with the reason in the fitter's words. */
export const EXPECTED = z
  .array(row)
  .parse(JSON.parse(readFileSync(new URL("./expected.json", import.meta.url), "utf8")));

/** Places in a value where a number is not finite. */
export function notFinite(value: unknown, path = "answer"): readonly string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path} = ${value}`];
  if (value instanceof Float64Array)
    return value.every(Number.isFinite) ? [] : [`${path} holds a number that is not finite`];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => notFinite(inner, `${path}.${key}`));
}
