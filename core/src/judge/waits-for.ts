import type { Survey } from "../survey/case.ts";
import { becauseOf } from "./because.ts";
import type { Gated } from "./gates.ts";
import type { CaseToJudge } from "./input.ts";
import { missingUnder } from "./next/missing.ts";
import type { Choice } from "./remedy/choice.ts";
import type { Decided } from "./remedy/through-gates.ts";

/**
 * The readings that an answer "measure-more" waits for: those of its gates' rules that are missing, and those the fit lacks.
 * Where nothing is missing (readings that contradict one another) the rules' places are all looked at again. A rule that
 * bars for another reason than a missing reading is told and waits for nothing.
 */
export function waitsFor(
  decided: Decided,
  choice: Choice,
  { survey, horseIndex }: CaseToJudge,
  gated: Gated,
): readonly string[] {
  const asks = (rule: string): boolean =>
    gated.shut.some((shut) => shut.rule === rule && shut.leadsTo === "measure-more");
  const ofGates = decided.rules.filter(asks).flatMap((rule) => becauseOf(rule, horseIndex).readings);
  const ofFit = (choice.wish === "measure-more" ? (choice.missing ?? []) : []).flatMap((place) =>
    narrowed(survey, place),
  );
  const named = missingUnder(survey, ofGates).map((question) => question.path);
  const all = [...named, ...ofFit];
  return [...new Set(all.length > 0 ? all : ofGates)];
}

/** Of a group what is missing in it; all of it where nothing is (it is read again), and tracings as they are named. */
function narrowed(survey: Survey, place: string): readonly string[] {
  if (/\.traces\b/.test(place)) return [place];
  const missing = missingUnder(survey, [place]).map((question) => question.path);
  return missing.length > 0 ? missing : [place];
}
