import { headKind } from "../reach/build.ts";
import type { SurveyedHorse } from "../survey/case.ts";
import type { WorkAnswer } from "../terms/answers.ts";
import type { Gated } from "./gates.ts";
import type { CaseToJudge } from "./input.ts";
import { limitRule } from "./limits/all.ts";
import { bandOf } from "./limits/bands.ts";
import { loadPart } from "./remedy/rider.ts";
import type { Decided } from "./remedy/through-gates.ts";
import { type CautionId, WORK_CAUTIONS } from "./words/cautions.ts";

/** What a caution is given for. `hollow`: a back that is wasted behind the shoulder. */
interface Said {
  readonly decided: Decided;
  readonly input: CaseToJudge;
  readonly gated: Gated;
  readonly hollow: boolean;
}

const FILLS: readonly WorkAnswer[] = ["panel", "set-up"];
const PRESSED: readonly WorkAnswer[] = ["alter-dressed", "alter-stripped", "set-back"];
const SIDES: readonly string[] = ["horse-sides-angle", "horse-sides-width"];

/** What goes with the work answer, and what the case itself calls for. */
export function workCautions({ decided, input, gated, hollow }: Said): readonly CautionId[] {
  const { survey, horseIndex } = input;
  const horse = survey.horses[horseIndex];
  const ids: CautionId[] = [...(WORK_CAUTIONS[decided.id] ?? [])];
  if (!gated.flagged && horse !== undefined) ids.push(...ofFit(input, horse, hollow));
  const fills = [decided.id, ...decided.also].some((id) => FILLS.includes(id));
  if (fills && gated.passed.right.rules.includes("right-other-horses")) ids.push("work-shared-panel");
  const warmed = survey.saddle.build.treeTemperature === "15-C-and-over";
  if (survey.saddle.build.arch === "polymer" && !warmed) ids.push("work-polymer-cold");
  const pressed = [decided.id, ...decided.also].some((id) => PRESSED.includes(id));
  if (pressed && headKind(survey.saddle.build) === "barred-polymer") ids.push("work-polymer-creep");
  if (horse?.history.growing === "yes") ids.push("work-growing");
  if (horse?.standing.whiteHairs === "yes") ids.push("work-white-hairs");
  if (isTrainee(input)) ids.push("work-trainee");
  if (survey.visit.diseaseInYard !== "no") ids.push("yard-disease");
  return ids;
}

/** What belongs to a fit that was judged. */
function ofFit(input: CaseToJudge, horse: SurveyedHorse, hollow: boolean): readonly CautionId[] {
  const uneven = input.computedToday.some(
    ({ rule, value }) =>
      SIDES.includes(rule) && value !== undefined && bandOf(limitRule(rule), value) === "outside",
  );
  return [
    ...(horse.traces.some((trace) => trace.temper === "warm") ? [] : ["work-cold-only" as const]),
    ...(hollow ? ["work-hollow" as const] : []),
    ...(uneven ? ["work-horse-sides" as const] : []),
    ...(loadPart({ survey: input.survey, horse }) === undefined ? ["work-load-not-known" as const] : []),
  ];
}

function isTrainee({ survey: { worker } }: CaseToJudge): boolean {
  return [worker.assess, worker.exchange, worker.press, worker.strip].includes("trainee");
}
