import type { Survey } from "../survey/case.ts";
import { horseFindings } from "./findings/horse.ts";
import { isFlagged } from "./gates/horse.ts";

/** On a horse flag no setting, pressure or fit is computed or shown; ask this before computing any. */
export function horseShutsFit(survey: Survey, horseIndex: number): boolean {
  const horse = survey.horses[horseIndex];
  if (horse === undefined) throw new Error(`no horse ${horseIndex} in this case`);
  return isFlagged(horseFindings(survey, horse));
}
