import { isRead, type Measured, type QuantityKind, type Reading } from "../survey/reading.ts";
import type { Assumed } from "../terms/assumed.ts";
import type { Instrument } from "../terms/instruments.ts";
import type { Deviations, Uncertain } from "./model.ts";

/** The value of a reading in one draw; NaN where it was not read (its path is then among the lacking). */
export type Drawn = (deviations: Deviations) => number;

const UNIT_WORD: { readonly [K in QuantityKind]: string } = {
  length: "mm",
  angle: "rad",
  mass: "kg",
  force: "N",
  count: "1",
  time: "min",
  age: "years",
  weeks: "weeks",
};

/** Id of a reading's own deviation: its path in the case, and its unit. */
export const ownId = (path: string, kind: QuantityKind): string => `${path}.${UNIT_WORD[kind]}`;
/** Id of the deviation that all readings of one instrument share, in standard uncertainties: how much of it a reading takes over is that reading's own to say. */
export const sharedId = (instrument: Instrument, kind: QuantityKind): string =>
  `${instrument}.${kind}.shared.1`;

type Range = Pick<Assumed, "id" | "base" | "lo" | "hi">;

/** An assumption as an input that is drawn. */
export const inRange = ({ id, base, lo, hi }: Range): Uncertain => ({
  id,
  kind: "range",
  mean: base,
  lo,
  hi,
});

/** Collects the readings a form is made of: each one's own doubt, each instrument's shared doubt once, and what is missing. */
export class Doubts {
  private readonly found = new Map<string, Uncertain>();
  private readonly missing: string[] = [];

  /** A reading that the form cannot do without. */
  take(path: string, measured: Measured): Drawn {
    if (isRead(measured)) return this.read(path, measured);
    this.missing.push(path);
    return () => Number.NaN;
  }

  /** A reading that may be missing; then undefined. */
  takeIfRead(path: string, measured: Measured): Drawn | undefined {
    return isRead(measured) ? this.read(path, measured) : undefined;
  }

  /** A reading in whose place a drawn assumption stands while it is missing. */
  takeOrAssume(
    path: string,
    measured: Measured,
    unit: "mm" | "rad",
    assumed: { readonly base: number; readonly lo: number; readonly hi: number },
  ): Drawn {
    return this.takeWithin(path, measured, { id: `${path}.assumed.${unit}`, ...assumed });
  }

  /** The same with the assumption's own id; undefined where there is no such reading. */
  takeWithin(path: string, measured: Measured | undefined, assumed: Range): Drawn {
    if (measured !== undefined && isRead(measured)) return this.read(path, measured);
    this.found.set(assumed.id, inRange(assumed));
    return (deviations) => assumed.base + (deviations[assumed.id] ?? 0);
  }

  lack(path: string): void {
    this.missing.push(path);
  }

  get lacking(): readonly string[] {
    return this.missing;
  }

  get uncertain(): readonly Uncertain[] {
    return [...this.found.values()];
  }

  private read(path: string, reading: Reading): Drawn {
    const own = ownId(path, reading.kind);
    this.found.set(own, { id: own, kind: "normal", mean: reading.value, sd: reading.own });
    const shared = sharedId(reading.instrument, reading.kind);
    if (reading.shared > 0) this.found.set(shared, { id: shared, kind: "normal", mean: 0, sd: 1 });
    return (deviations) =>
      reading.value + (deviations[own] ?? 0) + reading.shared * (deviations[shared] ?? 0);
  }
}
