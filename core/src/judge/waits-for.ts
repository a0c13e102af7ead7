import { becauseOf } from "./because.ts";
import type { CaseToJudge } from "./input.ts";
import { missingUnder } from "./next/missing.ts";
import type { Choice } from "./remedy/choice.ts";
import type { Decided } from "./remedy/through-gates.ts";

/**
 * The readings that an answer "measure-more" waits for: those of its gates' rules that are missing, and those the fit lacks.
 * Where nothing is missing (readings that contradict one another) the rules' places are all looked at again.
 */
export function waitsFor(
  decided: Decided,
  choice: Choice,
  { survey, horseIndex }: CaseToJudge,
): readonly string[] {
  const ofGates = decided.rules
    .filter((rule) => !rule.startsWith("fit-"))
    .flatMap((rule) => becauseOf(rule, horseIndex).readings);
  const ofFit = choice.wish === "measure-more" ? (choice.missing ?? []) : [];
  const named = missingUnder(survey, ofGates).map((question) => question.path);
  const all = [...named, ...ofFit];
  return [...new Set(all.length > 0 ? all : ofGates)];
}
