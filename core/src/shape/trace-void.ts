import type { SurveyedHorse, Trace } from "../survey/case.ts";
import { isRead } from "../survey/reading.ts";
import { massOfHorse } from "./weight.ts";

/** A trace is void after more than one grade of condition, or more than this part of the mass (common practice, no source). */
export const VOID_GRADES = 1;
export const VOID_MASS_PART = 0.05;

/** What has changed since a trace was drawn; undefined where it is not known then and now. */
export interface ChangedSince {
  readonly grades: number | undefined;
  /** Part of the mass then. */
  readonly massPart: number | undefined;
}

/** Best estimates; a mass by tape is held against a mass by tape of the same horse, and the equation's own error goes out. */
export function changedSince(horse: SurveyedHorse, { conditionThen, massThen }: Trace): ChangedSince {
  const { condition } = horse.body;
  const now = massOfHorse(horse)?.best.kg;
  return {
    grades: isRead(condition) && isRead(conditionThen) ? condition.value - conditionThen.value : undefined,
    massPart: now !== undefined && isRead(massThen) ? (now - massThen.value) / massThen.value : undefined,
  };
}

/** Whether the back under this trace is another by now. Not known is not void. */
export function isVoid(horse: SurveyedHorse, trace: Trace): boolean {
  const { grades, massPart } = changedSince(horse, trace);
  return Math.abs(grades ?? 0) > VOID_GRADES || Math.abs(massPart ?? 0) > VOID_MASS_PART;
}
