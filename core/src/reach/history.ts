import { isRead } from "../survey/reading.ts";
import type { SurveyedSaddle } from "../survey/case.ts";

/** What earlier alterations have done to a head, as far as they are on record. mm at the tips. */
export interface PressHistory {
  readonly known: boolean;
  /** Net change from as made. */
  readonly netMm: number;
  /** Sum of all changes, whichever way. */
  readonly pathMm: number;
  readonly reversals: number;
  readonly lastMm: number | undefined;
}

/**
 * Sums the record. A spread as made beside today's spread gives the net change even when the record is silent;
 * the larger of both counts, since what is not on record was done all the same.
 */
export function pressHistory(saddle: SurveyedSaddle): PressHistory {
  const changes: number[] = [];
  let known = saddle.past.alterationsKnown === "none" || saddle.past.alterationsKnown === "listed";
  for (const alteration of saddle.past.alterations) {
    if (alteration.way === "exchange") continue;
    if (isRead(alteration.change)) changes.push(alteration.change.value);
    else known = false;
  }
  const recorded = changes.reduce((sum, change) => sum + change, 0);
  const measured = measuredNetMm(saddle);
  const netMm = measured !== undefined && Math.abs(measured) > Math.abs(recorded) ? measured : recorded;
  return {
    known,
    netMm,
    pathMm: Math.max(
      changes.reduce((sum, change) => sum + Math.abs(change), 0),
      Math.abs(netMm),
    ),
    reversals: countReversals(changes),
    lastMm: changes.at(-1),
  };
}

function measuredNetMm(saddle: SurveyedSaddle): number | undefined {
  const { spreadTips, asMadeSpreadTips } = saddle.head;
  return isRead(spreadTips) && isRead(asMadeSpreadTips) ? spreadTips.value - asMadeSpreadTips.value : undefined;
}

/** How often a change went the other way than the one before it. */
export function countReversals(changes: readonly number[]): number {
  return changes.filter((change, i) => i > 0 && change * (changes[i - 1] ?? 0) < 0).length;
}
