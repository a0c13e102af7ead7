import type { Provenance } from "./provenance.ts";

/** What a calculation needs and nobody has measured. `lo` to `hi` is drawn, half the draws on each side of `base`; the unit ends the id. */
export interface Assumption {
  readonly id: string;
  readonly base: number;
  readonly lo: number;
  readonly hi: number;
  readonly says: string;
  readonly provenance: Provenance;
}
