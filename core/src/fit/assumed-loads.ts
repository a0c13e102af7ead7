import { inRange } from "../shape/doubt.ts";
import type { Deviations, Uncertain } from "../shape/model.ts";
import type { Assumed } from "../terms/assumed.ts";
import type { Provenance } from "../terms/provenance.ts";

/** What of loads and tissue is taken as given: drawn like the rest. */
export interface AssumedLoad extends Assumed {
  /** What the provenance rests on, in words; empty where it says all. */
  readonly source: string;
}

const guessed = by("assumption", "no published figure was found");
const layered = by(
  "assumption",
  "range within Isogai et al. 2022 (26 to 2199 kPa under the skin, 62 to 440 kPa in muscle, men) and Zheng and Mak 1999 (10.4 to 89.2 kPa, from memory); no figure of a horse's back was found",
);
const anatomy = by("from memory", "anatomy: thin over bone and cartilage, deep over the long muscle");

/**
 * Stiffness of each zone is a multiple of the back's own (`tissue.modulus.MPa`, drawn in common); all multiples are 1 and
 * all depths alike at best estimate, since nothing published tells the zones apart. Each is drawn by itself.
 */
export const ASSUMED_LOADS = {
  withersStiffer: layered(
    "tissue.withers.times.1",
    1,
    0.6,
    2.2,
    "stiffness beside the withers, times the back's",
  ),
  bladeStiffer: layered(
    "tissue.blade.times.1",
    1,
    0.7,
    2,
    "stiffness over the shoulder blade, times the back's",
  ),
  muscleStiffer: layered(
    "tissue.muscle.times.1",
    1,
    0.6,
    1.6,
    "stiffness of the long muscle, times the back's",
  ),
  loinStiffer: layered("tissue.loin.times.1", 1, 0.5, 1.6, "stiffness of the loin, times the back's"),
  withersDeepMm: anatomy("tissue.withers.depth.mm", 40, 15, 45, "depth of tissue beside the withers"),
  bladeDeepMm: anatomy("tissue.blade.depth.mm", 40, 20, 50, "depth of tissue over the shoulder blade"),
  muscleDeepMm: anatomy("tissue.muscle.depth.mm", 40, 25, 60, "depth of tissue over the long muscle"),
  loinDeepMm: anatomy("tissue.loin.depth.mm", 40, 30, 70, "depth of tissue over the loin"),
  quickTimes: of(
    "tissue.quick.times.1",
    3,
    1,
    7,
    "stiffness of the back under the quick part of a gait's load, times that under a standing one",
    "assumption",
    "upper end Palevski et al. 2006, J Biomech Eng 128:782-787 (5711 against 807 Pa, muscle of pigs, short and long term); lower end no quickening",
  ),
  withersEndMm: guessed(
    "tissue.withers.end.mm",
    120,
    80,
    160,
    "where the withers end, behind the front station",
  ),
  withersOutMm: guessed("tissue.withers.out.mm", 70, 50, 90, "how far out the withers' side reaches"),
  bladeEdgeMm: of(
    "tissue.blade.edge.mm",
    -65,
    -80,
    -50,
    "back edge of the shoulder blade, where it was not read",
    "common practice, no source",
    "the points lie 50 to 80 mm behind it",
  ),
  lastRibMm: guessed(
    "tissue.last-rib.mm",
    470,
    430,
    520,
    "last rib's line behind the front station, where it was not read",
  ),
  ridgeWidthMm: of(
    "ridge.width.mm",
    45,
    35,
    55,
    "width of spine and ridge, where it was not read",
    "from memory",
  ),
  boneModulusMPa: guessed(
    "ridge.modulus.MPa",
    2,
    0.5,
    10,
    "stiffness of skin and ligament over the ridge's bone",
  ),
  boneDeepMm: guessed("ridge.depth.mm", 8, 3, 15, "depth of skin and ligament over the ridge's bone"),
  frontStrapPart: guessed(
    "girth.front.part",
    0.5,
    0.35,
    0.65,
    "share of the girth's pull on the front one of two straps",
  ),
  buckleBelowMm: guessed(
    "girth.buckle.mm",
    250,
    150,
    350,
    "how far below the tips two straps meet in one buckle",
  ),
  barsAheadMm: of(
    "bars.ahead.mm",
    160,
    130,
    190,
    "stirrup bars ahead of the deepest seat, where not read",
    "from memory",
  ),
  barsApartMm: of(
    "bars.apart.mm",
    260,
    220,
    300,
    "from one stirrup bar to the other, where not read",
    "from memory",
  ),
  barsOverTipsMm: guessed(
    "bars.over-tips.mm",
    35,
    10,
    60,
    "stirrup bars over the tips of the tree, where not read",
  ),
  risingPart: guessed(
    "bars.rising.part",
    0.2,
    0,
    0.5,
    "share of the load on the bars, rising trot, when the rider sits down",
  ),
  halfSeatPart: of(
    "bars.half-seat.part",
    0.4,
    0.2,
    0.8,
    "share of the load on the bars, in half-seat or standing; the rest goes in by knee and thigh",
    "assumption",
    "no published figure was found; two thirds then come on the front third (Latif et al. 2010, a jockey's seat: over 80 %)",
  ),
  groundTimes: guessed(
    "mount.ground.times.1",
    1.2,
    1,
    1.5,
    "force on the stirrup, mounting from the ground, times rider",
  ),
  groundOutward: guessed(
    "mount.ground.outward.1",
    0.35,
    0.15,
    0.6,
    "outward part of that pull, times its downward part",
  ),
  mountHandPart: guessed(
    "mount.hand.part",
    0.4,
    0.3,
    0.5,
    "share of the load on the hand at the cantle while mounting",
  ),
  platformTimes: guessed(
    "mount.platform.times.1",
    1,
    0.6,
    1.2,
    "force on the stirrup, mounting from 350 mm, times rider",
  ),
  platformOutward: guessed(
    "mount.platform.outward.1",
    0.15,
    0,
    0.3,
    "outward part of that pull, times its downward part",
  ),
} as const;

export type AssumedLoadName = keyof typeof ASSUMED_LOADS;

/** Value of one of them in a draw. */
export function assumedLoad(name: AssumedLoadName, deviations: Deviations): number {
  const one = ASSUMED_LOADS[name];
  return one.base + (deviations[one.id] ?? 0);
}

/** Those that a draw of the whole depends on, each once. */
export const uncertainOf = (names: readonly AssumedLoadName[]): readonly Uncertain[] =>
  names.map((name) => inRange(ASSUMED_LOADS[name]));

function by(provenance: Provenance, source: string) {
  return (id: string, base: number, lo: number, hi: number, says: string): AssumedLoad => ({
    id,
    base,
    lo,
    hi,
    says,
    provenance,
    source,
  });
}

function of(
  id: string,
  base: number,
  lo: number,
  hi: number,
  says: string,
  provenance: Provenance,
  source = "",
): AssumedLoad {
  return by(provenance, source)(id, base, lo, hi, says);
}
