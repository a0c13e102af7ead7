import { type QuantityKind, usualUnit } from "../engine/quantity/index.ts";
import type { Instrument } from "../terms/instruments.ts";

/** Standard uncertainty of one reading: its own part, and the part all readings of that instrument share. */
export interface Doubt {
  readonly own: number;
  readonly shared: number;
}

/** What an instrument can read and how well, in the usual unit of each kind (mm, degrees, kg, count, min, years, weeks). */
export interface InstrumentRecord {
  readonly instrument: Instrument;
  readonly reads: { readonly [K in QuantityKind]?: Doubt };
  readonly provenance: "assumption" | "common practice, no source";
  readonly says: string;
}

/** 3 and 2 degrees in all, half of the variance shared: 3 / sqrt 2 and 2 / sqrt 2. */
const HALF_OF_3 = 3 / Math.sqrt(2);
const HALF_OF_2 = 2 / Math.sqrt(2);

export const INSTRUMENT_RECORDS: readonly InstrumentRecord[] = [
  {
    instrument: "flexible-curve",
    reads: { length: { own: HALF_OF_3, shared: HALF_OF_3 }, angle: { own: HALF_OF_2, shared: HALF_OF_2 } },
    provenance: "assumption",
    says: "3 mm and 2 degrees in all, half of the variance shared by all traces of one curve and hand",
  },
  {
    instrument: "protractor",
    reads: { angle: { own: 1, shared: 1 } },
    provenance: "assumption",
    says: "1 degree own, 1 shared",
  },
  {
    instrument: "ruler",
    reads: { length: { own: 1, shared: 0.5 } },
    provenance: "assumption",
    says: "1 mm own, 0.5 shared",
  },
  {
    instrument: "tape",
    reads: { length: { own: 10, shared: 5 } },
    provenance: "assumption",
    says: "round or along a body: 10 mm own by breath, hair and place, 5 shared by one tape and hand",
  },
  {
    instrument: "calliper",
    reads: { length: { own: 2, shared: 0.5 } },
    provenance: "common practice, no source",
    says: "dressed: 2 mm own through leather; shared 0.5 is an assumption",
  },
  {
    instrument: "feeler",
    reads: { length: { own: 0.5, shared: 0 } },
    provenance: "assumption",
    says: "0.5 mm",
  },
  {
    instrument: "fingers",
    reads: { length: { own: 5, shared: 3 } },
    provenance: "assumption",
    says: "5 mm own, 3 shared by one hand",
  },
  {
    instrument: "template",
    reads: { length: { own: 1, shared: 0 } },
    provenance: "assumption",
    says: "offered up: 1 mm",
  },
  {
    instrument: "level",
    reads: { angle: { own: 0.3, shared: 0.2 } },
    provenance: "assumption",
    says: "0.3 degrees own, 0.2 shared",
  },
  {
    instrument: "scale",
    reads: { mass: { own: 1, shared: 0.5 } },
    provenance: "assumption",
    says: "1 kg own, 0.5 shared",
  },
  {
    instrument: "count",
    reads: {
      count: { own: 0, shared: 0 },
      time: { own: 5, shared: 0 },
      age: { own: 0.3, shared: 0 },
      weeks: { own: 0.3, shared: 0 },
    },
    provenance: "assumption",
    says: "counts are exact; whole years and weeks are rounded (1 / sqrt 12 of one), minutes known to 5",
  },
  {
    instrument: "eye",
    reads: {
      length: { own: 10, shared: 5 },
      angle: { own: 5, shared: 3 },
      mass: { own: 8, shared: 4 },
      count: { own: 1, shared: 0 },
      time: { own: 30, shared: 0 },
      age: { own: 2, shared: 0 },
      weeks: { own: 1, shared: 0 },
    },
    provenance: "assumption",
    says: "a guess by eye or from being told",
  },
];

/** A calliper on a bare tree. Common practice, no source: 0.5 mm; shared 0.2 is an assumption. */
export const CALLIPER_ON_BARE_TREE: Doubt = { own: 0.5, shared: 0.2 };

/** Own and shared part in the kept unit (mm, rad, kg ...), or undefined where the instrument does not read that kind. */
export function doubtOf(instrument: Instrument, kind: QuantityKind): Doubt | undefined {
  const usual = INSTRUMENT_RECORDS.find((record) => record.instrument === instrument)?.reads[kind];
  const { times } = usualUnit(kind);
  return usual && { own: usual.own * times, shared: usual.shared * times };
}

export const instrumentsFor = (kind: QuantityKind): readonly Instrument[] =>
  INSTRUMENT_RECORDS.filter((record) => record.reads[kind]).map((record) => record.instrument);
