import { isVoid } from "../../shape/trace-void.ts";
import type { Survey, SurveyedHorse } from "../../survey/case.ts";
import { known } from "./answered.ts";
import type { RightFindings } from "./orders.ts";

/** A horse counts as measured when a front trace of it is there that still tells of its back. */
export function horseIsMeasured(horse: SurveyedHorse): boolean {
  return horse.traces.some((trace) => trace.station === "front" && !isVoid(horse, trace));
}

/** Whether every horse that wears the saddle is measured, or this one is signed for alone. */
function otherHorses(survey: Survey, horseIndex: number): RightFindings["otherHorses"] {
  if (survey.horses[horseIndex]?.onlyThisHorse === "yes") return "covered";
  const inCase = survey.horses.every((horse, index) => index === horseIndex || horseIsMeasured(horse));
  return inCase && survey.saddle.standing.othersWearIt === "no" ? "covered" : "not-covered";
}

export function rightFindings(survey: Survey, horseIndex: number): RightFindings {
  const standing = survey.saddle.standing;
  return {
    claim: known(standing.claimOrDispute),
    consent: known(standing.ownerConsents),
    otherHorses: otherHorses(survey, horseIndex),
  };
}
