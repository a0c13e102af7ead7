import type { Answer } from "./answer/result.ts";
import type { Document, Measure } from "./engine/drawing.ts";
import { letterDataOf } from "./papers/letter.ts";
import { sheetDataOf } from "./papers/sheet.ts";
import { templateDataOf } from "./papers/template.ts";
import { letterOf } from "./report/letter.ts";
import { sheetOf } from "./report/sheet.ts";
import { templateOf } from "./report/template.ts";
import type { Survey } from "./survey/case.ts";

export const PAPER_KINDS = ["letter", "sheet", "template"] as const;
export type PaperKind = (typeof PAPER_KINDS)[number];

/**
 * One paper of an answer as drawing data: what was answered is put in words and handed to the report. `measure` is the
 * width of words in the fonts that will be used. Undefined: a template on a flag, or without a head and a front trace.
 */
export function documentOf(
  kind: PaperKind,
  survey: Survey,
  answer: Answer,
  measure: Measure,
): Document | undefined {
  if (kind === "letter") return letterOf(letterDataOf(survey, answer), measure);
  if (kind === "sheet") return sheetOf(sheetDataOf(survey, answer), measure);
  const template = templateDataOf(survey, answer);
  return template && templateOf(template, measure);
}
