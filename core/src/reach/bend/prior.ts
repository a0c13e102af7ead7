import type { Deviations, Uncertain } from "../../shape/model.ts";
import type { Measured, Reading } from "../../survey/reading.ts";
import { isRead } from "../../survey/reading.ts";
import type { Provenance } from "../../terms/provenance.ts";

/** What bending needs to know of a head, as a range from `lo` to `hi` about `base`. The last word of `id` is its unit. */
export interface Prior {
  readonly id: string;
  readonly base: number;
  readonly lo: number;
  readonly hi: number;
  readonly says: string;
  readonly provenance: Provenance;
}

/** What was taken for it: its range, or the reading that stands in its place. */
export interface Taken {
  readonly prior: Prior;
  readonly reading: Reading | undefined;
}

/** Values of priors in one draw; a reading takes its prior's place, with its own doubt. */
export class Beliefs {
  private readonly found = new Map<string, Taken>();

  take(prior: Prior, measured?: Measured): (deviations: Deviations) => number {
    const reading = measured !== undefined && isRead(measured) ? measured : undefined;
    this.found.set(prior.id, { prior, reading });
    const base = reading?.value ?? prior.base;
    // A reading's doubt is cut where nothing is left of the part.
    return (deviations) => Math.max(base / 4, base + (deviations[prior.id] ?? 0));
  }

  get taken(): readonly Taken[] {
    return [...this.found.values()];
  }

  get uncertain(): readonly Uncertain[] {
    return this.taken.map(({ prior: { id, base, lo, hi }, reading }) =>
      reading === undefined
        ? { id, kind: "range", mean: base, lo, hi }
        : {
            id,
            kind: "normal",
            mean: reading.value,
            sd: Math.sqrt(reading.own * reading.own + reading.shared * reading.shared),
          },
    );
  }
}
