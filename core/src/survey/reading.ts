import type { QuantityKind } from "../engine/quantity/index.ts";
import type { Instrument } from "../terms/instruments.ts";
import type { Absent } from "../terms/knowing.ts";

export { CANONICAL, type QuantityKind } from "../engine/quantity/index.ts";

/**
 * One measured value. `value`, `own` and `shared` are in the canonical unit of `kind`;
 * `own` and `shared` are standard uncertainties, `shared` is common to all readings of one instrument
 * and does not average away. `typed` is what the hand wrote, kept for showing back.
 */
export interface Reading {
  readonly kind: QuantityKind;
  readonly value: number;
  readonly own: number;
  readonly shared: number;
  /** The hand typed its own uncertainty; else `own` comes from the table of instruments and the repeats. */
  readonly ownTyped?: true;
  readonly instrument: Instrument;
  readonly typed: string;
  /** Name of the unit typed ("mm", "in", "deg"); the usual one when absent. */
  readonly unit?: string;
  /** Repeats in the canonical unit, when the reading was taken more than once; `value` is their mean. */
  readonly repeats: readonly number[];
}

export interface Missing {
  readonly absent: Absent;
}

export type Measured = Reading | Missing;

export function isRead(measured: Measured): measured is Reading {
  return !("absent" in measured);
}
