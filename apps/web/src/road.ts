/**
 * All of core that the page knows, in one place. The page works out no figure of its own.
 */
export type { Setting } from "@treewright/core/reach/setting.ts";
export type { Fit, PressureField, Rest, SectionFit, ThirdFit } from "@treewright/core/fit/fit.ts";
export type { Answered, Because, JudgedLimit, NextReading } from "@treewright/core/judge/judgement.ts";
export type { Survey } from "@treewright/core/survey/case.ts";
export { CASE_BYTES_MAX } from "@treewright/core/survey/case.ts";
export { aboutPath } from "@treewright/core/survey/about-path.ts";
import { sha256Hex } from "@treewright/core/engine/hash.ts";
export { OUTCOME_WORDS } from "@treewright/core/report/outcome-mark.ts";
export { ORDER_OF_WORK, type Section } from "@treewright/core/survey/order-of-work.ts";
export { pathOf, stepsOf } from "@treewright/core/survey/path.ts";
export { allowedAt, type Problem } from "@treewright/core/survey/problem.ts";
export { type CaseRead, readCase } from "@treewright/core/survey/read-case.ts";
export { FIELDS, type FieldRecord, fieldAt } from "@treewright/core/survey/schema-fields.ts";
export type { HorseAnswer, Outcome, SaddleAnswer, WorkAnswer } from "@treewright/core/terms/answers.ts";
export { ABSENT } from "@treewright/core/terms/knowing.ts";
export { SIDES, type Side, STATIONS, type Station } from "@treewright/core/terms/places.ts";
export * from "./road-dev.ts";
import type { CaseRead } from "@treewright/core/survey/read-case.ts";

/** A case that core has taken. */
export type Accepted = Extract<CaseRead, { ok: true }>;

/** The draws of one case always start from the same number, so the same readings give the same figures everywhere. */
export const SEED = 1;

/** Fingerprint of every digit of a value; typed arrays count as lists. */
export function printOf(value: unknown): string {
  const plain = JSON.stringify(value, (_, part) => (part instanceof Float64Array ? Array.from(part) : part));
  return sha256Hex(new TextEncoder().encode(plain));
}
