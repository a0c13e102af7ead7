import type { Uncertain } from "../shape/model.ts";
import type { Survey, SurveyedHorse } from "../survey/case.ts";
import { uncertainOf } from "./assumed-loads.ts";
import { type BarsBelief, barsOf } from "./bars.ts";
import { type RiddenGait, riddenGaits, uncertainPeaks } from "./gaits.ts";
import { type GirthBelief, girthOf } from "./girth.ts";
import { type TissueBelief, tissueOf } from "./tissue.ts";

/** What was read of how a horse is loaded and what it is loaded on, with what is not known of it. */
export interface LoadsRead {
  readonly girth: GirthBelief;
  readonly bars: BarsBelief;
  readonly tissue: TissueBelief;
  readonly gaits: readonly RiddenGait[];
  readonly mounts: Survey["rider"]["rides"]["mounts"];
  readonly uncertain: readonly Uncertain[];
}

export function loadsRead({ saddle, rider }: Survey, horse: SurveyedHorse): LoadsRead {
  const [girth, bars, tissue] = [girthOf(saddle), barsOf(saddle), tissueOf(horse)];
  const gaits = riddenGaits(rider.rides);
  const onBars = gaits.flatMap((gait) => (gait.onBars === undefined ? [] : [gait.onBars]));
  return {
    girth,
    bars,
    tissue,
    gaits,
    mounts: rider.rides.mounts,
    uncertain: [
      ...girth.uncertain,
      ...bars.uncertain,
      ...tissue.uncertain,
      ...uncertainPeaks(gaits),
      ...uncertainOf([...onBars, "quickTimes"]),
    ],
  };
}
