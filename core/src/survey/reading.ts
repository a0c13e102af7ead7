import type { Absent } from "../terms/knowing.ts";
import type { Instrument } from "../terms/instruments.ts";

/** What kind of thing a reading measures; each kind has one canonical unit. */
export const CANONICAL = {
  length: "mm",
  angle: "rad",
  mass: "kg",
  force: "N",
  count: "1",
  time: "min",
  age: "years",
  weeks: "weeks",
} as const;
export type QuantityKind = keyof typeof CANONICAL;

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
  readonly instrument: Instrument;
  readonly typed: string;
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
