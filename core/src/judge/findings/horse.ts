import type { Survey, SurveyedHorse } from "../../survey/case.ts";
import { limitRule } from "../limits/all.ts";
import { judgeLimit } from "../limits/judge-limit.ts";
import { single } from "../measure/figure.ts";
import { anyOf, known, valueOf } from "./answered.ts";
import type { HorseFindings } from "./orders.ts";
import { handsOn, pain } from "./pain.ts";

/** Eight or more of the published 24 ridden signs suggest pain (Dyson et al. 2018; from memory). */
export const RIDDEN_SIGNS_FLAG = 8;
/** Weeks off work over which a back is not in its working shape, and weeks back after which it is again (common practice, no source). */
export const OFF_WORK_WEEKS = 4;
export const BACK_IN_WORK_WEEKS = 6;

/** Signs that want a vet before any saddle work. The list of ridden signs is not asked of every horse; when counted it counts. */
function otherSign(
  horse: SurveyedHorse,
  disease: Survey["visit"]["diseaseInYard"],
): HorseFindings["otherSign"] {
  const past = horse.history;
  const counted = valueOf(past.riddenSigns);
  if (disease === "yes" || (counted !== undefined && counted >= RIDDEN_SIGNS_FLAG)) return "yes";
  return anyOf([
    past.suddenChange,
    past.fall,
    past.painkillers7Days,
    past.oneSidedMuscleLoss,
    past.weightFalling,
    past.slipsSameWay,
    horse.standing.heat,
  ]);
}

function workingShape(horse: SurveyedHorse): HorseFindings["workingShape"] {
  const off = valueOf(horse.history.offWorkWeeks);
  if (off === undefined) return "not-known";
  if (off <= OFF_WORK_WEEKS) return "in-work";
  const back = valueOf(horse.history.backInWorkWeeks);
  if (back === undefined) return "not-known";
  return back >= BACK_IN_WORK_WEEKS ? "in-work" : "off-work";
}

/** A hollow over its limit, on doubt; undefined where nobody laid a straight-edge over it. */
function isHollow(measured: SurveyedHorse["standing"]["hollowNear"]): boolean | undefined {
  const { value, u } = single("hollow", { at: "" }, { path: "", measured });
  return value === undefined
    ? undefined
    : judgeLimit(limitRule("hollow"), value, u, "withdraw") === "outside";
}

/** A growing horse, and a wasted one, will have another back in six to eight weeks. */
function shape({ history, standing }: SurveyedHorse): HorseFindings["shape"] {
  const hollows = [isHollow(standing.hollowNear), isHollow(standing.hollowOff)];
  if (history.growing === "yes" || hollows.includes(true)) return "changing";
  return history.growing === "no" && !hollows.includes(undefined) ? "settled" : "not-known";
}

/** One horse's findings, reduced. A horse that nobody touched or trotted up is never "no". */
export function horseFindings(survey: Survey, horse: SurveyedHorse): HorseFindings {
  return {
    hands: handsOn(horse),
    pain: pain(horse),
    lame: known(horse.moving.uneven),
    nerves: anyOf([horse.history.nerveSigns, horse.moving.toeDragOrStumble]),
    lesion: anyOf([horse.history.wound, horse.standing.swelling, horse.standing.openSore]),
    otherSign: otherSign(horse, survey.visit.diseaseInYard),
    workingShape: workingShape(horse),
    shape: shape(horse),
  };
}
