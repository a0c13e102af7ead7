import type { Gated } from "./gates.ts";
import type { CaseToJudge } from "./input.ts";
import type { Decided } from "./remedy/through-gates.ts";
import { type CautionId, WORK_CAUTIONS } from "./words/cautions.ts";

/** What goes with the work answer, and what the case itself calls for. */
export function workCautions(
  decided: Decided,
  { survey, horseIndex }: CaseToJudge,
  gated: Gated,
): readonly CautionId[] {
  const horse = survey.horses[horseIndex];
  const worker = survey.worker;
  const warm = horse?.traces.some((trace) => trace.temper === "warm") === true;
  const trainee = [worker.assess, worker.exchange, worker.press, worker.strip].includes("trainee");
  const ids: CautionId[] = [...(WORK_CAUTIONS[decided.id] ?? [])];
  if (!gated.flagged && !warm) ids.push("work-cold-only");
  if (horse?.history.growing === "yes") ids.push("work-growing");
  if (trainee) ids.push("work-trainee");
  if (survey.visit.diseaseInYard !== "no") ids.push("yard-disease");
  return ids;
}
