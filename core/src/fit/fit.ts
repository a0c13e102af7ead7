import type { RefusalReason } from "../engine/contact/problem.ts";
import type { Side, Station, Third } from "../terms/places.ts";
import type { Gait } from "./gaits.ts";
import type { Unloaded } from "./unloaded.ts";

/** Tree against back at one station and side. Positive misfit: the tree is steeper (tight at the tip). */
export interface SectionFit {
  readonly station: Station;
  readonly side: Side;
  readonly treeFaceRad: number;
  readonly backFaceRad: number;
  readonly misfitRad: number;
}

export interface ThirdFit {
  readonly third: Third;
  readonly side: Side;
  readonly meanKPa: number;
  readonly maxKPa: number;
  readonly areaCm2: number;
  /** Part of the sum of all pressures times area. */
  readonly share: number;
}

/** A third with what a pressure mat would call its peak: the highest mean over any 4 cm2. */
export interface RiddenThird extends ThirdFit {
  readonly sensorKPa: number;
}

/** One gait at its peak, `times` the weight. A comparison of settings on this back, and no permission. */
export type GaitFit = {
  readonly gait: Gait;
  /** As it is ridden, in words. */
  readonly says: string;
  readonly times: number;
} & (
  | {
      readonly ok: true;
      readonly thirds: readonly RiddenThird[];
      /** Area that presses on the ridge, cm2. */
      readonly ridgeCm2: number;
    }
  | NoRest
);

/** How one tree rests on one back under one load: its pose, and what is read off it. */
export interface Seat {
  readonly ok: true;
  readonly headUpRad: number;
  readonly rollRad: number;
  readonly heaveMm: number;
  /** Height of the crown over the midline at the front station; only differences between settings are used. */
  readonly crownOverBackMm: number;
  readonly frontRiseMm: number;
  readonly rearRiseMm: number;
  readonly centreXMm: number;
  readonly smallestEigenvalue: number;
  readonly unbalancedXN: number;
}

/** A seat with the pressures under it, and what a hand would find before it was loaded. */
export interface Rest extends Seat, Unloaded {
  readonly thirds: readonly ThirdFit[];
  /** Area that presses on the ridge, cm2: any of it is a touch. */
  readonly ridgeCm2: number;
  readonly field: PressureField;
}

/** The pressures as a map: nx by nv cells a side, near side first, for drawing. */
export interface PressureField {
  readonly nx: number;
  readonly nv: number;
  readonly xMm: Float64Array;
  readonly yMm: Float64Array;
  readonly kPa: Float64Array;
}

export interface NoRest {
  readonly ok: false;
  readonly why: RefusalReason;
}

/** One setting on one horse: sections always, the rest where the readings allow it. */
export interface Fit {
  readonly changeMm: number;
  readonly sections: readonly SectionFit[];
  readonly rest: Rest | NoRest | undefined;
  /** Walk, trot, canter at their peaks; empty where nothing rests. */
  readonly gaits: readonly GaitFit[];
}
