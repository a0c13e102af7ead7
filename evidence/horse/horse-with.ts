import { readFileSync } from "node:fs";
import type { Survey, SurveyedHorse } from "../../core/src/survey/case.ts";
import { readCase } from "../../core/src/survey/read-case.ts";

const FULL = new URL("../../core/src/survey/fixtures/full.json", import.meta.url);

/** The full case with its first horse otherwise, as a file's text. */
export function caseText(horse: object, rider: object = {}): string {
  const file = JSON.parse(readFileSync(FULL, "utf8"));
  file.horses[0] = { ...file.horses[0], ...horse };
  file.rider = { ...file.rider, ...rider };
  return JSON.stringify(file);
}

export function surveyWith(horse: object, rider: object = {}): Survey {
  const read = readCase(caseText(horse, rider));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.survey;
}

export function horseWith(horse: object): SurveyedHorse {
  const [first] = surveyWith(horse).horses;
  if (first === undefined) throw new Error("the full case has no horse");
  return first;
}
