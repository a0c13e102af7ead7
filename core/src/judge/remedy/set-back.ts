import { pressHistory } from "../../reach/history.ts";
import { isRead } from "../../survey/reading.ts";
import type { Known } from "./known.ts";

/** How near to as made a setting has to lie to be a setting back, mm at the tips, and how many reversals may be on record (common practice, no source). */
const AS_MADE_WITHIN_MM = 3;
const REVERSALS_MAX = 2;

/** The way back of an earlier change: near as made, the other way than the last change, fewer than two reversals. */
export function isSetBack({ survey }: Known, changeMm: number): boolean {
  const { spreadTips, asMadeSpreadTips } = survey.saddle.head;
  if (!isRead(spreadTips) || !isRead(asMadeSpreadTips)) return false;
  const { lastMm, reversals } = pressHistory(survey.saddle);
  const near = Math.abs(spreadTips.value + changeMm - asMadeSpreadTips.value) <= AS_MADE_WITHIN_MM;
  return near && lastMm !== undefined && lastMm * changeMm < 0 && reversals < REVERSALS_MAX;
}
