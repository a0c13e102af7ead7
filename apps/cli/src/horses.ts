import type { Survey } from "@treewright/core/survey/case.ts";
import { type Given, wholeNumber } from "./command.ts";
import { EXIT, Stop } from "./exit.ts";

export const HORSES_MOST = 8;

/** Index of the horse that --horse names, counted from 1; undefined where it was not given. */
export function horseNamed(survey: Survey, given: Given): number | undefined {
  const wanted = wholeNumber(given, "horse", 1, HORSES_MOST);
  if (wanted === undefined || wanted <= survey.horses.length)
    return wanted === undefined ? undefined : wanted - 1;
  throw new Stop(EXIT.wrongUse, `--horse ${wanted}: this case has ${survey.horses.length}.`);
}

/** The horse that --horse names; the only one of a case needs no name. */
export function oneHorse(survey: Survey, given: Given): number {
  const horse = horseNamed(survey, given) ?? (survey.horses.length === 1 ? 0 : undefined);
  if (horse !== undefined) return horse;
  throw new Stop(EXIT.wrongUse, `This case has ${survey.horses.length} horses: say which with --horse N.`);
}
