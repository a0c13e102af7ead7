import type { BySide } from "../terms/places.ts";
import type { Figure } from "./figures.ts";

/** One third on one side at the peak of a gait. */
export interface GaitThird {
  readonly meanKPa: number;
  /** Highest mean over any 4 cm2. */
  readonly mostKPa: number;
  readonly areaCm2: number;
  readonly sharePercent: number;
  /** Change of the mean against today, kPa; undefined where nothing is changed. */
  readonly change: Figure | undefined;
}

/** One gait at its peak, on today's saddle. */
export interface GaitRow {
  /** As it is ridden. */
  readonly name: string;
  /** How high it peaks, its range and where that is from, in words. */
  readonly peak: string;
  /** Force over two beats, [part of the two beats, times the weight]: at the peak taken, and at the ends of its range. */
  readonly curves: readonly (readonly (readonly [number, number])[])[];
  /** Front, middle, rear; empty where the saddle does not lie so. */
  readonly thirds: readonly (BySide<GaitThird> & { readonly third: string })[];
  /** Why there are no thirds. */
  readonly why: string | undefined;
}

/** Walk, trot and canter, and the rider out of the saddle, by calculation. A comparison, never a permission. */
export interface GaitSheet {
  readonly rows: readonly GaitRow[];
  readonly says: readonly string[];
  readonly assumed: readonly string[];
}
