import type { StripCells } from "../engine/contact/strip-cells.ts";
import { Doubts } from "../shape/doubt.ts";
import type { Deviations, Tree, Uncertain } from "../shape/model.ts";
import type { SurveyedHorse } from "../survey/case.ts";
import { isRead, type Measured } from "../survey/reading.ts";
import { type ByStation, STATIONS } from "../terms/places.ts";
import { TISSUE_MM } from "./assumed.ts";
import { type AssumedLoadName, assumedLoad, uncertainOf } from "./assumed-loads.ts";

export type TissueZone = "withers" | "blade" | "muscle" | "loin";

/**
 * A border is as wide as this, mm (assumption 20 to 60): tissues run into one another, and no figure jumps when a row of
 * cells crosses a line that nobody saw.
 */
const BORDER_MM = 40;

/** Tissue under each cell, and which cells lie over the ridge, where nothing may press. */
export interface TissueUnder {
  readonly modulusMPa: Float64Array;
  readonly depthMm: Float64Array;
  readonly onRidge: Uint8Array;
}

/** The back's four kinds of tissue and its ridge, with what is not known of them. */
export interface TissueBelief {
  /** `commonMPa`: stiffness of the back as a whole in this draw. Cells lie `slideMm` further back than in the saddle. */
  under(
    cells: StripCells,
    tree: Tree,
    commonMPa: number,
    slideMm: number,
    deviations: Deviations,
  ): TissueUnder;
  readonly uncertain: readonly Uncertain[];
}

/** One tissue all over, and no ridge. */
export const ONE_TISSUE: TissueBelief = {
  under: ({ n }, _tree, commonMPa) => ({
    modulusMPa: new Float64Array(n).fill(commonMPa),
    depthMm: new Float64Array(n).fill(TISSUE_MM),
    onRidge: new Uint8Array(n),
  }),
  uncertain: [],
};

/**
 * Zones by place: over the blade ahead of its back edge, loin behind the last rib's line, withers to the sides of the
 * ridge in front, the long muscle everywhere else. Borders as read on this horse where they were, else assumed and drawn.
 */
export function tissueOf(horse: SurveyedHorse): TissueBelief {
  const { girthed, standing } = horse;
  const doubts = new Doubts();
  const meanOf = (path: string, a: [string, Measured], b: [string, Measured]) => {
    const both = [a, b].flatMap(([name, one]) => (isRead(one) ? [doubts.take(`${path}.${name}`, one)] : []));
    if (both.length === 0) return undefined;
    return (deviations: Deviations) => both.reduce((sum, one) => sum + one(deviations), 0) / both.length;
  };
  const blade = meanOf(
    "girthed",
    ["pointBehindBladeNear", girthed.pointBehindBladeNear],
    ["pointBehindBladeOff", girthed.pointBehindBladeOff],
  );
  const rib = meanOf(
    "standing",
    ["usableLengthNear", standing.usableLengthNear],
    ["usableLengthOff", standing.usableLengthOff],
  );
  const ridges = { front: standing.ridgeFront, mid: standing.ridgeMid, rear: standing.ridgeRear };
  const assumed: AssumedLoadName[] = [...ALWAYS];
  if (blade === undefined) assumed.push("bladeEdgeMm");
  if (rib === undefined) assumed.push("lastRibMm");
  return {
    under: (cells, tree, commonMPa, slideMm, deviations) =>
      underCells(cells, slideMm, {
        bladeEdge: blade === undefined ? assumedLoad("bladeEdgeMm", deviations) : -blade(deviations),
        lastRib: rib === undefined ? assumedLoad("lastRibMm", deviations) : rib(deviations),
        withersEnd: assumedLoad("withersEndMm", deviations),
        withersOut: assumedLoad("withersOutMm", deviations),
        modulus: byZone(deviations, "Stiffer", commonMPa),
        depth: byZone(deviations, "DeepMm", 1),
        boneMPa: assumedLoad("boneModulusMPa", deviations),
        boneMm: assumedLoad("boneDeepMm", deviations),
        ridgeHalf: ridgeAlong(ridges, tree.stationsMm, assumedLoad("ridgeWidthMm", deviations)),
      }),
    uncertain: [...doubts.uncertain, ...uncertainOf(assumed)],
  };
}

const ALWAYS = [
  "withersStiffer",
  "bladeStiffer",
  "muscleStiffer",
  "loinStiffer",
  "withersDeepMm",
  "bladeDeepMm",
  "muscleDeepMm",
  "loinDeepMm",
  "withersEndMm",
  "withersOutMm",
] as const satisfies readonly AssumedLoadName[];

type ByZone = { readonly [Z in TissueZone]: number };

/** One of the zones' properties, times a common value. */
function byZone(deviations: Deviations, what: "Stiffer" | "DeepMm", times: number): ByZone {
  const at = (zone: TissueZone) => times * assumedLoad(`${zone}${what}`, deviations);
  return { withers: at("withers"), blade: at("blade"), muscle: at("muscle"), loin: at("loin") };
}

interface Tissue {
  readonly bladeEdge: number;
  readonly lastRib: number;
  readonly withersEnd: number;
  readonly withersOut: number;
  readonly modulus: ByZone;
  readonly depth: ByZone;
  readonly boneMPa: number;
  readonly boneMm: number;
  ridgeHalf(xMm: number): number;
}

/** Kernel: cells of one row share their x, and so all that changes along the back. */
function underCells(cells: StripCells, slideMm: number, tissue: Tissue): TissueUnder {
  const { n, x, y } = cells;
  const [modulusMPa, depthMm, onRidge] = [new Float64Array(n), new Float64Array(n), new Uint8Array(n)];
  // As differences from muscle: where all are alike they are one tissue to the last digit.
  const mpa = againstMuscle(tissue.modulus);
  const mm = againstMuscle(tissue.depth);
  const { withersOut, boneMPa, boneMm } = tissue;
  let [rowX, ridge, blade, loin, along] = [Number.NaN, 0, 0, 0, 0];
  for (let i = 0; i < n; i++) {
    if (x[i]! !== rowX) {
      rowX = x[i]!;
      ridge = tissue.ridgeHalf(rowX);
      blade = 1 - past(rowX + slideMm, tissue.bladeEdge);
      loin = past(rowX + slideMm, tissue.lastRib);
      along = (1 - blade) * (1 - loin) * (1 - past(rowX + slideMm, tissue.withersEnd));
    }
    const out = Math.abs(y[i]!);
    const onBone = out < ridge;
    const withers = along * (1 - past(out, withersOut));
    onRidge[i] = onBone ? 1 : 0;
    modulusMPa[i] = onBone
      ? boneMPa
      : mpa.muscle + withers * mpa.withers + blade * mpa.blade + loin * mpa.loin;
    depthMm[i] = onBone ? boneMm : mm.muscle + withers * mm.withers + blade * mm.blade + loin * mm.loin;
  }
  return { modulusMPa, depthMm, onRidge };
}

const againstMuscle = ({ withers, blade, muscle, loin }: ByZone): ByZone => {
  return { withers: withers - muscle, blade: blade - muscle, muscle, loin: loin - muscle };
};

/** How far a place is past a border: 0 before it, 1 behind it, smooth between. */
function past(place: number, border: number): number {
  const t = Math.min(1, Math.max(0, (place - border) / BORDER_MM + 0.5));
  return t * t * (3 - 2 * t);
}

/** Half the ridge's width along the saddle: straight between the stations where it was read, the same beyond them. */
function ridgeAlong(
  ridges: ByStation<Measured>,
  stations: ByStation<number>,
  usual: number,
): (xMm: number) => number {
  const known = STATIONS.map((station) => {
    const read = ridges[station];
    return { x: stations[station], half: (isRead(read) ? read.value : usual) / 2 };
  });
  return (xMm) => {
    const next = known.findIndex(({ x }) => x >= xMm);
    const [a, b] = [known[next - 1], known[next]];
    if (b === undefined) return known.at(-1)?.half ?? usual / 2;
    if (a === undefined) return b.half;
    return a.half + ((b.half - a.half) * (xMm - a.x)) / (b.x - a.x);
  };
}
