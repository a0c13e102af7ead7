import { inRange } from "../shape/doubt.ts";
import type { Uncertain } from "../shape/model.ts";
import type { Assumed } from "../terms/assumed.ts";

/** What the mechanics of sitting need and nobody has measured on this horse. The base set was fitted to six published numbers; it is not thereby validated. Printed wherever a pressure is. */
export const ASSUMED = {
  panelModulusMPa: of("panel.modulus.MPa", 0.1, 0.03, 0.3, "stiffness of the panel's filling"),
  tissueModulusMPa: of("tissue.modulus.MPa", 0.06, 0.03, 0.2, "stiffness of the back"),
  friction: of("friction.1", 0.3, 0, 0.35, "effective friction across the slope of the back"),
  loadPart: of("load.at.part", 0.48, 0.46, 0.52, "where the load acts, as part of the bearing's length"),
  loadHeightMm: of("load.height.mm", 300, 200, 350, "height at which the load acts, fixed to the seat"),
  girthN: of("girth.each.N", 100, 60, 180, "pull of the girth on each side"),
  placementMm: of("placement.mm", 0, -20, 20, "where the saddle comes to lie, fore and aft"),
  riderMassKg: of("rider.mass.kg", 72, 50, 110, "rider and tack, where they were not weighed"),
  // Second-hand figures: 5 to 7 kg of saddle and 1.4 kg of stirrups; the rest is girth, numnah and the range.
  tackMassKg: of("tack.mass.kg", 8, 6, 12, "tack alone, where only the rider was weighed"),
} as const;

export type AssumedName = keyof typeof ASSUMED;

/** Depth of tissue under the panel that takes part, mm (assumption). */
export const TISSUE_MM = 40;
/** Bow of the panel's face across, 1/mm: a radius of 300 mm (assumption, as in the reference cases). */
export const FACE_BOW_PER_MM = 1 / 300;
/** Compression of the layers beyond which the law is refused, as part of their thickness. */
export const COMPRESSION_LIMIT = 0.7;
/** Standard gravity, ISO 80000-3, m/s2. */
export const GRAVITY = 9.80665;

function of(id: string, base: number, lo: number, hi: number, says: string): Assumed {
  return { id, base, lo, hi, says, provenance: "assumption" };
}

export const ASSUMED_UNCERTAIN: readonly Uncertain[] = Object.values(ASSUMED).map(inRange);
