import type { Answer } from "./answer/result.ts";
import { cutSvgOf } from "./engine/drawing/cut-svg.ts";
import { dxfOf } from "./engine/drawing/dxf.ts";
import type { Document, Measure } from "./engine/drawing.ts";
import { letterDataOf } from "./papers/letter.ts";
import { sheetDataOf } from "./papers/sheet.ts";
import { templateDataOf } from "./papers/template.ts";
import { calculationSheetOf } from "./report/calculation-sheet.ts";
import { cutTemplateOf } from "./report/cut-template.ts";
import { halfTemplateOf } from "./report/half-template.ts";
import { letterOf } from "./report/letter.ts";
import { sectionSheetsOf } from "./report/section-sheets.ts";
import { sheetOf } from "./report/sheet.ts";
import { templateOf } from "./report/template.ts";
import type { TemplateData } from "./report/template-data.ts";
import { ENGLISH, type Tongue } from "./report/tongue.ts";
import type { Survey } from "./survey/case.ts";

export const PAPER_KINDS = ["letter", "sheet", "calculation", "sections", "template"] as const;
export type PaperKind = (typeof PAPER_KINDS)[number];

/** How a template is asked for. */
export interface TemplateAsked {
  /** The face of the head; else the one that the saddle's state asks for. */
  readonly face?: TemplateData["face"] | undefined;
  readonly byHalves?: boolean;
}

/**
 * One paper of an answer as drawing data: what was answered is put in words and handed to the report. `measure` is the
 * width of words in the fonts that will be used. Undefined: all but letter and sheet on a flag, or without a head and a
 * front trace. `tongue` is the language of the letter; what the fitter works by is in English.
 */
export function documentOf(
  kind: PaperKind,
  survey: Survey,
  answer: Answer,
  measure: Measure,
  { face, byHalves = false }: TemplateAsked = {},
  tongue: Tongue = ENGLISH,
): Document | undefined {
  if (kind === "letter") return letterOf(letterDataOf(survey, answer, tongue), measure, tongue);
  if (kind === "sheet") return sheetOf(sheetDataOf(survey, answer), measure);
  if (kind === "calculation") return calculationSheetOf(sheetDataOf(survey, answer), measure);
  if (kind === "sections") return sectionsOf(survey, answer, measure);
  const template = templateDataOf(survey, answer, face);
  return template && (byHalves ? halfTemplateOf : templateOf)(template, measure);
}

function sectionsOf(survey: Survey, answer: Answer, measure: Measure): Document | undefined {
  const data = sheetDataOf(survey, answer);
  return data.sections.length === 0 ? undefined : sectionSheetsOf(data, measure);
}

/** Files that a machine that cuts takes. */
export const CUT_KINDS = ["svg", "dxf"] as const;
export type CutKind = (typeof CUT_KINDS)[number];

/** The same template for a machine that cuts, as a file's text: bare outlines and marks, no sheet. */
export function cutTemplate(
  kind: CutKind,
  survey: Survey,
  answer: Answer,
  { face, byHalves = false }: TemplateAsked = {},
): string | undefined {
  const template = templateDataOf(survey, answer, face);
  return template && { svg: cutSvgOf, dxf: dxfOf }[kind](cutTemplateOf(template, byHalves));
}
