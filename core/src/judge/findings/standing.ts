import type { Survey } from "../../survey/case.ts";
import { known, valueOf } from "./answered.ts";
import type { StandingFindings } from "./orders.ts";

/** A warranty nobody knows of is taken to run under this age (common practice, no source). */
export const WARRANTY_YEARS = 5;

type MayDo = Survey["worker"]["press"];

/** A trainee may what is countersigned at the bench, before and after; a title alone opens nothing. */
function may(ability: MayDo, countersigned: Survey["worker"]["countersigned"]): StandingFindings["mayPress"] {
  if (ability === "qualified") return "may";
  if (ability === "unknown") return "not-known";
  if (ability === "no" || countersigned === "no") return "may-not";
  return countersigned === "yes" ? "may" : "not-known";
}

function warranty(survey: Survey): StandingFindings["warranty"] {
  const said = survey.saddle.standing.inWarranty;
  if (said === "yes" || said === "no") return said === "yes" ? "taken-to-run" : "out";
  const years = valueOf(survey.saddle.past.age);
  return years === undefined || years < WARRANTY_YEARS ? "taken-to-run" : "out";
}

export function standingFindings(survey: Survey): StandingFindings {
  const { worker } = survey;
  const permits = known(survey.saddle.standing.makerPermits);
  return {
    warranty: warranty(survey),
    makerPermits: permits,
    mayAssess: may(worker.assess, worker.countersigned),
    mayExchange: may(worker.exchange, worker.countersigned),
    mayPress: may(worker.press, worker.countersigned),
    mayStrip: may(worker.strip, worker.countersigned),
  };
}
