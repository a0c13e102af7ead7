import type { Provenance } from "./provenance.ts";

/**
 * What a calculation needs and nobody has measured here: `lo` to `hi` is drawn, half the draws on each side of `base`.
 * The last word of `id` is its unit.
 */
export interface Assumed {
  readonly id: string;
  readonly base: number;
  readonly lo: number;
  readonly hi: number;
  readonly says: string;
  readonly provenance: Provenance;
}
