import type { Provenance } from "../../terms/provenance.ts";

/** A strain in the press beyond which a setting is shut, at the base values. */
export interface StrainStop {
  readonly id: "cap-wood-strain" | "cap-polymer-strain";
  /** Without unit. */
  readonly limit: number;
  readonly says: string;
  readonly provenance: Provenance;
}

/**
 * Wood breaks first: beech breaks at a stretch of 0.8 to 1.2 % (rupture over stiffness of the Wood Handbook is 0.87 %)
 * and is crushed from about 0.4 %. The stop is half to three quarters of that. It shuts what the other caps allow and
 * never opens what they shut.
 */
export const STRAIN_STOPS = {
  wood: {
    id: "cap-wood-strain",
    limit: 0.006,
    says: "stretch of the wood's outer face in the press, at the base values",
    provenance: "derived",
  },
  polymer: {
    id: "cap-polymer-strain",
    limit: 0.02,
    says: "strain of the polymer's outer face in the press, at the base values",
    provenance: "from memory",
  },
} as const satisfies Record<string, StrainStop>;
