/**
 * All of core that the page knows, in one place. The page works out no figure of its own.
 */

import { type OtherHand, sharedAnswer } from "@treewright/core/answer/shared.ts";
import { type Answer, answer } from "@treewright/core/answer.ts";
import { sha256Hex } from "@treewright/core/engine/hash.ts";
import { horseShutsFit } from "@treewright/core/judge/horse-flag.ts";
import type { Survey } from "@treewright/core/survey/case.ts";
import type { CaseRead } from "@treewright/core/survey/read-case.ts";

export { type DrawTable, joined } from "@treewright/core/answer/draw-table.ts";
export { type MovedHeads, movedHeads, type SweepPoint } from "@treewright/core/answer/moved-heads.ts";
export { clearanceRead, frontTrace, headAtClearance, type Placed } from "@treewright/core/answer/placed.ts";
export { type Road, roadOf } from "@treewright/core/answer/road.ts";
export { drawsElsewhere } from "@treewright/core/answer/shared.ts";
export { clipped } from "@treewright/core/engine/drawing/clip.ts";
export {
  CARD_MM,
  type CardSide,
  type Matched,
  type ScreenScale,
  STEP_PX,
  screenScale,
  sideRangePx,
} from "@treewright/core/engine/drawing/screen-scale.ts";
export { readNumber, show, unitCalled } from "@treewright/core/engine/quantity/index.ts";
export type { GaitFit, PressureField, Rest } from "@treewright/core/fit/fit.ts";
export { refusalSays } from "@treewright/core/fit/refusal-words.ts";
export {
  horseWords,
  mayRideSays,
  saddleWords,
  type Words,
  workWords,
} from "@treewright/core/judge/answer-words.ts";
export type { Answered, Because, NextReading } from "@treewright/core/judge/judgement.ts";
export { limitRule } from "@treewright/core/judge/limits/all.ts";
export { FAR_OVER_KPA } from "@treewright/core/judge/limits/pressed.ts";
export { readingSays } from "@treewright/core/judge/next/traces.ts";
export type { Judged } from "@treewright/core/judge/remedy/judged.ts";
export { templateDataOf } from "@treewright/core/papers/template.ts";
export {
  CUT_KINDS,
  type CutKind,
  cutTemplate,
  documentOf,
  PAPER_KINDS,
  type PaperKind,
  type TemplateAsked,
} from "@treewright/core/papers.ts";
export type { Setting } from "@treewright/core/reach/setting.ts";
export { agreementOf } from "@treewright/core/report/agreement.ts";
export { type Figure, printed, type Unit as FigureUnit } from "@treewright/core/report/figures.ts";
export {
  downFromCrown,
  type ScreenPart,
  screenParts,
  widthOverAllMm,
} from "@treewright/core/report/screen-parts.ts";
export { LEVELS as LEVELS_KPA } from "@treewright/core/report/sheet-pressure.ts";
export { ENGLISH, type Tongue } from "@treewright/core/report/tongue.ts";
export {
  type BackWidth,
  type FrontBack,
  frontBack,
  WIDTH_DEPTHS_MM,
  widthChange,
} from "@treewright/core/shape/back-widths.ts";
export { drawnAgain } from "@treewright/core/shape/drawn-again.ts";
export { headAsRead } from "@treewright/core/shape/head-as-read.ts";
export { aboutPath, type Say } from "@treewright/core/survey/about-path.ts";
export { readingOf } from "@treewright/core/survey/answer-question.ts";
export { CASE_BYTES_MAX, CASE_VERSION, type CaseFile } from "@treewright/core/survey/case.ts";
export { ORDER_OF_WORK, type Section } from "@treewright/core/survey/order-of-work.ts";
export { getAt, nameOf, pathOf, stepsOf } from "@treewright/core/survey/path.ts";
export type { Problem } from "@treewright/core/survey/problem.ts";
export {
  asksAt,
  drawingAgain,
  isAsked,
  type Question,
  questions,
} from "@treewright/core/survey/questions.ts";
export { readCase, readCaseValue } from "@treewright/core/survey/read-case.ts";
export { isRead } from "@treewright/core/survey/reading.ts";
export { refusedName, refusedPhotoFile } from "@treewright/core/survey/recorded/refused.ts";
export { repeatedReading } from "@treewright/core/survey/repeated.ts";
export { FIELDS, type FieldRecord, fieldAt } from "@treewright/core/survey/schema-fields.ts";
export {
  CHOICES as UNIT_CHOICES,
  type UnitsChosen,
  USUAL_UNITS,
  unitBeside,
  withUnitBeside,
} from "@treewright/core/survey/unit-beside.ts";
export type { Outcome } from "@treewright/core/terms/answers.ts";
export { ABSENT } from "@treewright/core/terms/knowing.ts";
export {
  SIDES,
  type Side,
  STATIONS,
  type Station,
  THIRDS,
  type Third,
  ZONES,
  type Zone,
} from "@treewright/core/terms/places.ts";
export { type Answer, answer, type OtherHand, type Survey, sha256Hex };

/** A case that core has taken. */
export type Accepted = Extract<CaseRead, { ok: true }>;

/** The draws of one case always start from the same number, so the same readings give the same figures everywhere. */
export const SEED = 1;

/** Heads are moved up to so much either way, mm: what the trade takes as the most (common practice, no source). */
export const CHANGE_MAX_MM = 20;

/** The mean answer first, then after each batch of draws, half of them by the other hand; the last one is the answer. */
export async function* answersShared(
  survey: Survey,
  horse: number,
  otherHand: OtherHand,
): AsyncGenerator<Answer, void> {
  const road = sharedAnswer(survey, { horse, seed: SEED }, otherHand);
  for (let step = await road.next(); ; step = await road.next()) {
    yield step.value;
    if (step.done) return;
  }
}

/** On a horse flag no setting, pressure or fit is computed or shown. */
export const mayBeFitted = (survey: Survey, horse: number): boolean => !horseShutsFit(survey, horse);

/** Fingerprint of every digit of a value; typed arrays count as lists. */
export function printOf(value: unknown): string {
  const plain = JSON.stringify(value, (_, part) => (part instanceof Float64Array ? Array.from(part) : part));
  return sha256Hex(new TextEncoder().encode(plain));
}
