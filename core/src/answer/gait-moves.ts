import type { Fit, RiddenThird } from "../fit/fit.ts";
import type { Gait } from "../fit/gaits.ts";
import type { RiddenPoses } from "../fit/ridden.ts";
import type { Side } from "../terms/places.ts";
import { type DrawTable, doubtOf } from "./draw-table.ts";
import type { Whole } from "./whole.ts";

/** What a change does to one third's mean at the peak of one gait, against today on the same back and load. */
export interface GaitMove {
  readonly gait: Gait;
  readonly third: RiddenThird["third"];
  readonly side: Side;
  readonly deltaKPa: number;
  /** Half of the central 95 % of the draws, kPa. */
  readonly uKPa: number | undefined;
}

type Gaits = Fit["gaits"];
type Difference = Omit<GaitMove, "uKPa">;

/** Every third whose mean is known before and after. */
function differences(today: Gaits, after: Gaits): readonly Difference[] {
  return today.flatMap((before, i) => {
    const then = after[i];
    if (!before.ok || then?.ok !== true) return [];
    return before.thirds.map(({ third, side, meanKPa }, k) => ({
      gait: before.gait,
      third,
      side,
      deltaKPa: (then.thirds[k]?.meanKPa ?? Number.NaN) - meanKPa,
    }));
  });
}

const keyOf = (name: string, { gait, third, side }: Omit<Difference, "deltaKPa">): string =>
  `ridden ${name} ${gait} ${third} ${side}`;

/** Notes a setting's differences in one draw, each gait begun from where it came to at the means. */
export function noteGaits(
  row: Record<string, number>,
  name: string,
  today: { readonly whole: Whole; readonly rides: RiddenPoses | undefined },
  after: { readonly whole: Whole; readonly rides: RiddenPoses | undefined },
): void {
  const gaits = ({ whole, rides }: typeof today) => whole.ridden(rides).gaits;
  for (const one of differences(gaits(today), gaits(after))) row[keyOf(name, one)] = one.deltaKPa;
}

/** What the chosen setting changes, with how sure each difference is. */
export function gaitMoves(
  today: Fit | undefined,
  chosen: Fit | undefined,
  table: DrawTable,
  name: string,
): readonly GaitMove[] {
  return differences(today?.gaits ?? [], chosen?.gaits ?? []).map((one) => ({
    ...one,
    uKPa: doubtOf(table, keyOf(name, one)),
  }));
}
