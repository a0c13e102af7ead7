import { limitRule } from "../../judge/limits/all.ts";
import type { Survey, SurveyedHorse, SurveyedSaddle } from "../../survey/case.ts";
import { isRead, type Measured } from "../../survey/reading.ts";
import { daysAfter } from "../../terms/day.ts";
import type { PanelKind, PanelProposal } from "./propose.ts";

/** What is put right before any fill of this list is made. */
export type PanelFirst = "reflock" | "square";
const WRONG: readonly SurveyedSaddle["panel"]["state"][] = ["flat", "lumpy", "wrong-shape"];

/** A panel that is flat, lumpy or wrongly shaped is re-flocked first; one that sits askew is set straight first. */
export function firstOf({ state, square }: SurveyedSaddle["panel"]): readonly PanelFirst[] {
  return [
    ...(square === "doubtful" || square === "failed" ? ["square" as const] : []),
    ...(WRONG.includes(state) ? ["reflock" as const] : []),
  ];
}

/** Wool is taken out as well as put in, where it is not flat. Anything else, and what nobody looked at, takes a shim, and a shim only adds. */
export const kindOf = ({ saddle }: Survey, horse: SurveyedHorse): PanelKind => ({
  takes: saddle.panel.filling === "wool" && saddle.panel.state === "good",
  oneSided: mayFillOneSide(horse),
});

/**
 * One side alone is filled only where slip, lameness and swelling were looked for and are not there: a saddle flocked
 * against the slip of a lame horse hides the lameness (common practice, no source). Not known is not "no".
 */
export function mayFillOneSide({ history, moving, standing, moved }: SurveyedHorse): boolean {
  const [, most] = limitRule("side-offset").inside;
  return (
    history.slipsSameWay === "no" &&
    moving.uneven === "no" &&
    standing.swelling === "no" &&
    isRead(moved.sideOffset) &&
    moved.sideOffset.value <= most
  );
}

/** A hollow behind the shoulder over what is usual: the fill is for now, and no head is narrowed to it. */
export function isHollow({ standing }: SurveyedHorse): boolean {
  const [, most] = limitRule("hollow").inside;
  const over = (one: Measured) => isRead(one) && one.value > most;
  return over(standing.hollowNear) || over(standing.hollowOff);
}

/** When the fill is looked at again, and whether it is for now only. */
export interface Recheck {
  readonly from: string;
  readonly to: string;
  /** Dated, and thinner at each visit. */
  readonly forNow: boolean;
}

/** Six to eight weeks (common practice, no source). */
const RECHECK_DAYS = [42, 56] as const;
/** New wool beds down by this much, mm, over its first 15 to 20 hours of riding (common practice, no source). */
export const BEDS_DOWN_MM = [5, 10] as const;

export function recheckOf(
  day: string,
  { deep, oneSided }: Pick<PanelProposal, "deep" | "oneSided">,
  hollow: boolean,
): Recheck {
  const [from, to] = RECHECK_DAYS;
  return { from: daysAfter(day, from), to: daysAfter(day, to), forNow: deep || oneSided || hollow };
}
