import type { SurveyedJob, SurveyedPass } from "../survey/job.ts";
import { isRead, type Measured } from "../survey/reading.ts";
import { GAUGE_OWN, HOLD_MIN } from "./doubts.ts";
import type { Known, MeasuredPass } from "./measured-pass.ts";
import type { Way } from "./press-curve.ts";

export type Before = SurveyedJob["before"];

/** A pass as the belief takes it; or the readings without which it teaches nothing. */
export type TakenPass =
  | { readonly ok: true; readonly pass: MeasuredPass }
  | { readonly ok: false; readonly lacking: readonly string[] };

/**
 * Readings of one pass become changes since before the job, counted in its way. What all readings of an instrument share
 * falls out of a difference; what the reading before the job had of its own in the spreads is the belief's (`datumMm`).
 */
export function takenPass(pass: SurveyedPass, before: Before, way: Way): TakenPass {
  const kept = (now: Measured, then: Measured): Known | undefined =>
    isRead(now) && isRead(then) ? { value: way * (now.value - then.value), u: now.own } : undefined;
  const turn = (now: Measured, then: Measured): Known | undefined =>
    isRead(now) && isRead(then)
      ? { value: way * (now.value - then.value), u: Math.sqrt(now.own * now.own + then.own * then.own) }
      : undefined;
  const travel = travelOf(pass);
  const keptTips = kept(pass.spreadTips, before.spreadTips);
  if (travel === undefined || keptTips === undefined)
    return {
      ok: false,
      lacking: [...(travel ? [] : ["travel"]), ...(keptTips ? [] : ["spreadTips"])],
    };
  const { forceN } = pass;
  return {
    ok: true,
    pass: {
      travel,
      forceN: forceN === undefined ? undefined : { value: forceN, u: GAUGE_OWN * forceN },
      holdMin: pass.holdMin ?? HOLD_MIN,
      keptTips,
      keptUpper: kept(pass.spreadUpper, before.spreadUpper),
      turnNear: turn(pass.halfAngleNear, before.halfAngleNear),
      turnOff: turn(pass.halfAngleOff, before.halfAngleOff),
      keptNextDay: kept(pass.spreadTipsNextDay, before.spreadTips),
    },
  };
}

function travelOf({ travel, travelNear, travelOff }: SurveyedPass): MeasuredPass["travel"] | undefined {
  const known = (one: Measured): Known | undefined =>
    isRead(one) ? { value: one.value, u: one.own } : undefined;
  const [near, off, both] = [known(travelNear), known(travelOff), known(travel)];
  if (near && off) return { near, off };
  return both && { both };
}
