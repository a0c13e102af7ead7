import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type Answer, answer } from "../../core/src/answer.ts";
import type { Document, Item, Measure } from "../../core/src/engine/drawing.ts";
import { documentOf, type PaperKind } from "../../core/src/papers.ts";
import type { Survey } from "../../core/src/survey/case.ts";
import { readCase } from "../../core/src/survey/read-case.ts";

const FOLDER = fileURLToPath(new URL("../../examples/cases/", import.meta.url));

export interface Answered {
  /** "09-alter-in-the-saddle, horse 1". */
  readonly name: string;
  readonly survey: Survey;
  readonly answer: Answer;
}

/** Every horse of every example, answered with all draws. */
export function answeredExamples(): readonly Answered[] {
  return readdirSync(FOLDER)
    .sort()
    .flatMap((file) => {
      const read = readCase(readFileSync(`${FOLDER}${file}`, "utf8"));
      if (!read.ok) throw new Error(`${file} is no case`);
      const { survey } = read;
      return survey.horses.map((_, horse) => ({
        name: `${file.replace(/\.json$/, "")}, horse ${horse + 1}`,
        survey,
        answer: lastOf(survey, horse),
      }));
    });
}

function lastOf(survey: Survey, horse: number): Answer {
  const steps = answer(survey, { horse, seed: 1 });
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

export function paperOf(
  kind: PaperKind,
  { survey, answer: found }: Answered,
  measure: Measure,
): Document | undefined {
  return documentOf(kind, survey, found, measure);
}

export const itemsOf = (document: Document): readonly Item[] => document.pages.flatMap((page) => page.items);

/** Everything that is written on a paper, as one text. */
export const saidOn = (document: Document): string =>
  itemsOf(document)
    .flatMap((item) => (item.kind === "text" ? [item.words] : []))
    .join(" ")
    .replace(/\s+/g, " ");
