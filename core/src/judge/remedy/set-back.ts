import { exchangeHistory, pressHistory } from "../../reach/history.ts";
import type { Setting } from "../../reach/setting.ts";
import { isRead } from "../../survey/reading.ts";
import type { Known } from "./known.ts";

/** How near to as made a setting has to lie to be a setting back, mm at the tips, and how many reversals may be on record (common practice, no source). */
const AS_MADE_WITHIN_MM = 3;
const REVERSALS_MAX = 2;

/** Why an earlier change is not set back; each is a rule and told in its words. */
export type NoSetBack =
  | "set-back-head-stays"
  | "set-back-nothing-on-record"
  | "set-back-heads-elsewhere"
  | "set-back-as-made-not-read"
  | "set-back-not-near"
  | "set-back-same-way"
  | "set-back-reversals"
  | "set-back-plate-not-kept";

type Case = Pick<Known, "survey">;

/** What the same way of moving has done before: a press tells nothing of an exchange, nor the other way round. */
const historyFor = ({ survey }: Case, { way }: Setting) =>
  way === "exchange" ? exchangeHistory(survey.saddle) : pressHistory(survey.saddle);

/** The last change of any kind that is on record. */
const isOnRecord = ({ survey: { saddle } }: Case): boolean =>
  pressHistory(saddle).lastMm !== undefined || exchangeHistory(saddle).lastMm !== undefined;

/** The same for a case whose head may stay as it is. */
export function whyNoSetBack(known: Case, setting: Setting | undefined): NoSetBack | undefined {
  if (setting !== undefined) return noSetBack(known, setting);
  return isOnRecord(known) ? "set-back-head-stays" : "set-back-nothing-on-record";
}

/** The plate that was in this head before, kept with the saddle; a press and inserts need none. */
const wayIsKept = ({ survey }: Case, { plate }: Setting): boolean =>
  plate === undefined || survey.platesAtHand[plate]?.wasInThisHead === "yes";

/**
 * The reason why this setting is not a setting back; undefined where it is one: near as made, the other way than the
 * last change, fewer than two reversals, at a press or by what was in this head before.
 */
export function noSetBack(known: Case, setting: Setting): NoSetBack | undefined {
  if (!isOnRecord(known)) return "set-back-nothing-on-record";
  if (setting.way !== "press" && setting.way !== "exchange") return "set-back-heads-elsewhere";
  const { spreadTips, asMadeSpreadTips } = known.survey.saddle.head;
  const { lastMm, reversals } = historyFor(known, setting);
  if (lastMm === undefined) return "set-back-nothing-on-record";
  if (!isRead(spreadTips) || !isRead(asMadeSpreadTips)) return "set-back-as-made-not-read";
  if (lastMm * setting.changeMm > 0) return "set-back-same-way";
  const offMm = spreadTips.value + setting.changeMm - asMadeSpreadTips.value;
  if (Math.abs(offMm) > AS_MADE_WITHIN_MM) return "set-back-not-near";
  if (reversals >= REVERSALS_MAX) return "set-back-reversals";
  return wayIsKept(known, setting) ? undefined : "set-back-plate-not-kept";
}
