import { headKind } from "../../reach/build.ts";
import { SIDES } from "../../terms/places.ts";
import type { CaseToJudge, MeasuredLimit } from "../input.ts";
import { measureLimits } from "../measure.ts";
import type { Tried } from "./best-setting.ts";
import { withNeeded } from "./faults.ts";
import type { Known } from "./known.ts";
import { harmed, untold } from "./others.ts";
import { afterChange, judgeAll } from "./whole.ts";

/** The fill today, as figures against its limit. */
function fillLimits(fillMm: CaseToJudge["fillMm"]): readonly MeasuredLimit[] {
  return SIDES.flatMap((side) => {
    const value = fillMm[side];
    return value === undefined ? [] : [{ rule: "fill", at: side, side, value, u: undefined, missing: [] }];
  });
}

/** Everything judged once: today, and each candidate's whole by what a wrong answer would cost on its way. */
export function gather(input: CaseToJudge): Known {
  const { survey, horseIndex, largerSide } = input;
  const horse = survey.horses[horseIndex];
  if (horse === undefined) throw new Error(`no horse ${horseIndex} in this case`);
  const measured = [
    ...measureLimits(survey, horseIndex),
    ...input.computedToday,
    ...fillLimits(input.fillMm),
  ];
  const tried = input.candidates
    .filter((candidate) => candidate.setting.way !== "as-found")
    .map((candidate): Tried => {
      const { way: moved } = candidate.setting;
      const way = moved === "press" || moved === "heat" ? "press" : "exchange";
      const limits = withNeeded(judgeAll(afterChange(measured, candidate), way, largerSide));
      return { candidate, limits, harms: harmed(candidate, input), untold: untold(candidate, input) };
    });
  return {
    survey,
    horse,
    path: `horses[${horseIndex}]`,
    build: headKind(survey.saddle.build),
    today: withNeeded(judgeAll(measured, "today", largerSide)),
    tried,
    template: measured.find((limit) => limit.rule === "spread-wanted" && limit.at === "template"),
    fillMm: input.fillMm,
    notAtRest: input.notAtRest,
    lacking: input.lacking,
  };
}
