import { inRange } from "../shape/doubt.ts";
import type { Deviations, Uncertain } from "../shape/model.ts";
import type { Assumed } from "../terms/assumed.ts";
import type { Provenance } from "../terms/provenance.ts";

/** What of loads and tissue is taken as given: drawn like the rest, with its source in words. */
export interface AssumedLoad extends Assumed {
  readonly source: string;
}

const NO_SOURCE = "no published figure was found";
const LAYERS =
  "range within Isogai et al. 2022 (26 to 2199 kPa under the skin, 62 to 440 kPa in muscle, men) and Zheng and Mak 1999 (10.4 to 89.2 kPa, from memory); no figure of a horse's back was found";
const ANATOMY = "from memory of anatomy: thin over bone and cartilage, deep over the long muscle";

/**
 * Stiffness of each zone is a multiple of the back's own (`tissue.modulus.MPa`, drawn in common); all multiples are 1 and
 * all depths alike at best estimate, since nothing published tells the zones apart. Each is drawn by itself.
 */
export const ASSUMED_LOADS = {
  withersStiffer: of(
    "tissue.withers.times.1",
    1,
    0.6,
    2.2,
    "stiffness beside the withers, times the back's",
    LAYERS,
  ),
  bladeStiffer: of(
    "tissue.blade.times.1",
    1,
    0.7,
    2,
    "stiffness over the shoulder blade, times the back's",
    LAYERS,
  ),
  muscleStiffer: of(
    "tissue.muscle.times.1",
    1,
    0.6,
    1.6,
    "stiffness of the long muscle, times the back's",
    LAYERS,
  ),
  loinStiffer: of("tissue.loin.times.1", 1, 0.5, 1.6, "stiffness of the loin, times the back's", LAYERS),
  withersDeepMm: of("tissue.withers.depth.mm", 40, 15, 45, "depth of tissue beside the withers", ANATOMY),
  bladeDeepMm: of("tissue.blade.depth.mm", 40, 20, 50, "depth of tissue over the shoulder blade", ANATOMY),
  muscleDeepMm: of("tissue.muscle.depth.mm", 40, 25, 60, "depth of tissue over the long muscle", ANATOMY),
  loinDeepMm: of("tissue.loin.depth.mm", 40, 30, 70, "depth of tissue over the loin", ANATOMY),
  quickTimes: of(
    "tissue.quick.times.1",
    3,
    1,
    7,
    "stiffness of the back under the quick part of a gait's load, times that under a standing one",
    "upper end Palevski et al. 2006, J Biomech Eng 128:782-787 (5711 against 807 Pa, muscle of pigs, short and long term); lower end no quickening",
  ),
  withersEndMm: of(
    "tissue.withers.end.mm",
    120,
    80,
    160,
    "where the withers end, behind the front station",
    NO_SOURCE,
  ),
  withersOutMm: of("tissue.withers.out.mm", 70, 50, 90, "how far out the withers' side reaches", NO_SOURCE),
  bladeEdgeMm: of(
    "tissue.blade.edge.mm",
    -65,
    -80,
    -50,
    "back edge of the shoulder blade, where it was not read",
    "common practice, no source: the points lie 50 to 80 mm behind it",
  ),
  lastRibMm: of(
    "tissue.last-rib.mm",
    470,
    430,
    520,
    "last rib's line behind the front station, where it was not read",
    NO_SOURCE,
  ),
  ridgeWidthMm: of(
    "ridge.width.mm",
    45,
    35,
    55,
    "width of spine and ridge, where it was not read",
    "from memory",
  ),
  boneModulusMPa: of(
    "ridge.modulus.MPa",
    2,
    0.5,
    10,
    "stiffness of skin and ligament over the ridge's bone",
    NO_SOURCE,
  ),
  boneDeepMm: of("ridge.depth.mm", 8, 3, 15, "depth of skin and ligament over the ridge's bone", NO_SOURCE),
  frontStrapPart: of(
    "girth.front.part",
    0.5,
    0.35,
    0.65,
    "share of the girth's pull on the front one of two straps",
    NO_SOURCE,
  ),
  buckleBelowMm: of(
    "girth.buckle.mm",
    250,
    150,
    350,
    "how far below the tips two straps meet in one buckle",
    NO_SOURCE,
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
  barsOverTipsMm: of(
    "bars.over-tips.mm",
    35,
    10,
    60,
    "stirrup bars over the tips of the tree, where not read",
    NO_SOURCE,
  ),
  risingPart: of(
    "bars.rising.part",
    0.2,
    0,
    0.5,
    "share of the load on the bars, rising trot, when the rider sits down",
    NO_SOURCE,
  ),
  halfSeatPart: of(
    "bars.half-seat.part",
    0.4,
    0.2,
    0.8,
    "share of the load on the bars, in half-seat or standing; the rest goes in by knee and thigh",
    "no published figure was found; two thirds then come on the front third (Latif et al. 2010, a jockey's seat: over 80 %)",
  ),
  groundTimes: of(
    "mount.ground.times.1",
    1.2,
    1,
    1.5,
    "force on the stirrup, mounting from the ground, times rider",
    NO_SOURCE,
  ),
  groundOutward: of(
    "mount.ground.outward.1",
    0.35,
    0.15,
    0.6,
    "outward part of that pull, times its downward part",
    NO_SOURCE,
  ),
  mountHandPart: of(
    "mount.hand.part",
    0.4,
    0.3,
    0.5,
    "share of the load on the hand at the cantle while mounting",
    NO_SOURCE,
  ),
  platformTimes: of(
    "mount.platform.times.1",
    1,
    0.6,
    1.2,
    "force on the stirrup, mounting from 350 mm, times rider",
    NO_SOURCE,
  ),
  platformOutward: of(
    "mount.platform.outward.1",
    0.15,
    0,
    0.3,
    "outward part of that pull, times its downward part",
    NO_SOURCE,
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

function of(id: string, base: number, lo: number, hi: number, says: string, source: string): AssumedLoad {
  const provenance: Provenance = source.startsWith("from memory") ? "from memory" : "assumption";
  return { id, base, lo, hi, says, provenance, source };
}
