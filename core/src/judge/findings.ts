import type { Survey } from "../survey/case.ts";
import { horseFindings } from "./findings/horse.ts";
import type { Findings } from "./findings/orders.ts";
import { rightFindings } from "./findings/right.ts";
import { soundnessFindings } from "./findings/soundness.ts";
import { standingFindings } from "./findings/standing.ts";
import { wayFindings } from "./findings/way.ts";

/** All that the gates read of a survey, for one of its horses. The gates see nothing else. */
export function findingsOf(survey: Survey, horseIndex: number): Findings {
  const horse = survey.horses[horseIndex];
  if (horse === undefined) throw new Error(`no horse ${horseIndex} in this case`);
  return {
    horse: horseFindings(survey, horse),
    right: rightFindings(survey, horseIndex),
    soundness: soundnessFindings(survey.saddle),
    standing: standingFindings(survey),
    way: wayFindings(survey.saddle),
  };
}
