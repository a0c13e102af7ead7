import type { Deviations, Uncertain } from "../shape/model.ts";
import type { Survey } from "../survey/case.ts";
import { GRAVITY } from "./assumed.ts";
import { type AssumedLoadName, assumedLoad } from "./assumed-loads.ts";

export const GAITS = ["walk", "trot", "canter"] as const;
export type Gait = (typeof GAITS)[number];

/** A published peak of the force on the back, in times the rider's weight. `sd`: its spread between riders and horses. */
export interface PublishedPeak {
  readonly id: string;
  readonly times: number;
  readonly sd: number;
  readonly source: string;
  readonly status: "read" | "from memory" | "derived";
}

const FRUEHWIRTH =
  "Fruehwirth et al. 2004, Equine Vet J 36:754-757 (12 horses, own saddles and riders; peak total force by rider's mass)";
const DE_COCQ = "de Cocq et al. 2010, J Biomech 43:627-631 (13 riders, from the rider's motion)";
const perKg = (id: string, newtonPerKg: number, sd: number): PublishedPeak => {
  return { id, times: newtonPerKg / GRAVITY, sd: sd / GRAVITY, source: FRUEHWIRTH, status: "from memory" };
};
const SITTING: PublishedPeak = { id: "trot-sitting", times: 3.03, sd: 0.32, source: DE_COCQ, status: "read" };
/** Greatest force at trot, two-point and sitting, N: Peham et al. 2010, Vet J 184:56-59 (read). */
const TWO_POINT_N = 1688;
const SITTING_N = 2112;

export const PEAKS = {
  walk: perKg("walk", 12.1, 1.2),
  trot: perKg("trot", 24.3, 4.6),
  canter: perKg("canter", 27.2, 4.4),
  sitting: SITTING,
  rising: { id: "trot-rising", times: 2.54, sd: 0.3, source: DE_COCQ, status: "read" },
  /** The other beat of the rising trot, the rider standing in the stirrups. */
  risen: { id: "trot-risen", times: 1.95, sd: 0.34, source: DE_COCQ, status: "read" },
  twoPoint: {
    id: "trot-two-point",
    times: (SITTING.times * TWO_POINT_N) / SITTING_N,
    sd: (SITTING.sd * TWO_POINT_N) / SITTING_N,
    source: `${DE_COCQ}, sitting, times ${TWO_POINT_N} by ${SITTING_N} N of Peham et al. 2010, Vet J 184:56-59`,
    status: "derived",
  },
} as const satisfies Record<string, PublishedPeak>;

/** Beats of a stride with a peak each; walk: von Peinen et al. 2009 (three peaks a half stride), trot: de Cocq et al. 2010, canter: from memory. */
export const BEATS: { readonly [G in Gait]: number } = { walk: 6, trot: 2, canter: 1 };

/** One gait as this horse is ridden: its peak, and how much of the load is on the stirrup bars at that moment. */
export interface RiddenGait {
  readonly gait: Gait;
  /** As it is ridden, in words. */
  readonly says: string;
  readonly peak: PublishedPeak;
  /** Undefined: the rider sits, and nothing is on the bars. */
  readonly onBars: AssumedLoadName | undefined;
}

type Rides = Survey["rider"]["rides"];

/** The three gaits; where nobody was asked how, the peak of any seat stands for the trot, and the canter counts as sat. */
export function riddenGaits({ trot, canter }: Rides): readonly RiddenGait[] {
  const trots: { readonly [T in Rides["trot"]]: Omit<RiddenGait, "gait"> } = {
    rising: { says: "rising trot, sitting down", peak: PEAKS.rising, onBars: "risingPart" },
    sitting: { says: "sitting trot", peak: PEAKS.sitting, onBars: undefined },
    "two-point": { says: "trot in half-seat", peak: PEAKS.twoPoint, onBars: "halfSeatPart" },
    "not-asked": { says: "trot, seat not asked", peak: PEAKS.trot, onBars: "risingPart" },
  };
  const half = canter === "half-seat";
  const cantered = half
    ? "canter in half-seat"
    : canter === "sitting"
      ? "canter, sat"
      : "canter, taken as sat";
  return [
    { gait: "walk", says: "walk", peak: PEAKS.walk, onBars: undefined },
    { gait: "trot", ...trots[trot] },
    { gait: "canter", says: cantered, peak: PEAKS.canter, onBars: half ? "halfSeatPart" : undefined },
  ];
}

/** A peak is drawn evenly over a range of its published spread: this many standard deviations each way. */
const EVEN_RANGE = Math.sqrt(3);

/** Lowest and highest peak that is drawn, in times the weight; never under the weight. */
export const peakRange = ({ times, sd }: PublishedPeak): readonly [number, number] => [
  Math.max(1, times - EVEN_RANGE * sd),
  times + EVEN_RANGE * sd,
];

const peakId = (gait: Gait): string => `gait.${gait}.peak.1`;

/** Peak of a gait in a draw, in times the weight. */
export const peakIn = ({ gait, peak }: RiddenGait, deviations: Deviations): number =>
  peak.times + (deviations[peakId(gait)] ?? 0);

export const onBarsIn = ({ onBars }: RiddenGait, deviations: Deviations): number =>
  onBars === undefined ? 0 : assumedLoad(onBars, deviations);

export function uncertainPeaks(gaits: readonly RiddenGait[]): readonly Uncertain[] {
  return gaits.map(({ gait, peak }) => {
    const [lo, hi] = peakRange(peak);
    return { id: peakId(gait), kind: "range", mean: peak.times, lo, hi };
  });
}
