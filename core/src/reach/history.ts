import type { SurveyedSaddle } from "../survey/case.ts";
import { isRead } from "../survey/reading.ts";

/** What earlier alterations have done to a head, as far as they are on record. mm at the tips. */
export interface PressHistory {
  readonly known: boolean;
  /** Net change from as made: as recorded and, where both spreads were read, as measured. A cap has to hold for each. */
  readonly netsMm: readonly number[];
  /** Sum of all changes, whichever way; what record and measure differ by was done as well, at the least. */
  readonly pathMm: number;
  readonly reversals: number;
  readonly lastMm: number | undefined;
}

/**
 * Sums the record. A spread as made beside today's spread gives the net change even when the record is silent;
 * what is not on record was done all the same.
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
  return {
    known,
    netsMm: measured === undefined ? [recorded] : [recorded, measured],
    pathMm:
      changes.reduce((sum, change) => sum + Math.abs(change), 0) +
      Math.abs((measured ?? recorded) - recorded),
    reversals: countReversals(changes),
    lastMm: changes.filter((change) => change !== 0).at(-1),
  };
}

function measuredNetMm(saddle: SurveyedSaddle): number | undefined {
  const { spreadTips, asMadeSpreadTips } = saddle.head;
  return isRead(spreadTips) && isRead(asMadeSpreadTips)
    ? spreadTips.value - asMadeSpreadTips.value
    : undefined;
}

/** What exchanges have done to a head: the last change, and how often they went the other way. mm at the tips. */
export function exchangeHistory({ past }: SurveyedSaddle): Pick<PressHistory, "reversals" | "lastMm"> {
  const changes = past.alterations.flatMap(({ way, change }) =>
    way === "exchange" && isRead(change) ? [change.value] : [],
  );
  return { reversals: countReversals(changes), lastMm: changes.filter((change) => change !== 0).at(-1) };
}

/** How often a change went the other way than the one before it; a visit that changed nothing is passed over. */
export function countReversals(changes: readonly number[]): number {
  const moved = changes.filter((change) => change !== 0);
  return moved.filter((change, i) => change * (moved[i - 1] ?? 0) < 0).length;
}
