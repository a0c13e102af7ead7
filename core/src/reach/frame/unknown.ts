import type { Assumed } from "../../terms/assumed.ts";
import type { Provenance } from "../../terms/provenance.ts";

/** Where a head hinges; the same for every build. */
export const HINGE = of(
  "frame.hinge.off.crown.mm",
  25,
  0,
  45,
  "hinge of each half, off the crown along the arch",
);

/** What nobody reads of any tree: the arch at the cantle. */
export const CANTLE = {
  riseMm: of("frame.cantle.rise.mm", 50, 30, 80, "rise of the rear arch over the rails' ends"),
  wideMm: of("frame.cantle.wide.mm", 60, 40, 90, "width of the rear arch along the back"),
} as const;

/** Laminated beech. The wood's stiffness along the grain is the head's. */
export const WOODEN = {
  shearMPa: of("frame.wood.shear.MPa", 900, 600, 1100, "stiffness of the wood in shear"),
  railThinMm: of("frame.rail.thick.mm", 10, 7, 14, "thickness of the rails"),
  railWideMm: of("frame.rail.wide.mm", 50, 35, 70, "mean width of the rails"),
  cantleThinMm: of("frame.cantle.thick.mm", 10, 7, 14, "thickness of the rear arch"),
  deckThinMm: of("frame.deck.thick.mm", 3, 0, 8, "thickness of the cantle's deck"),
} as const;

/** Moulded polymer. Its stiffness is the head's. */
export const MOULDED = {
  shearMPa: of("frame.polymer.shear.MPa", 650, 360, 1000, "stiffness of the polymer in shear"),
  railThinMm: of("frame.rail.thick.mm", 6, 4, 9, "thickness of the rails"),
  railWideMm: of("frame.rail.wide.mm", 50, 35, 70, "mean width of the rails"),
  cantleThinMm: of("frame.cantle.thick.mm", 6, 4, 9, "thickness of the rear arch"),
  deckThinMm: of("frame.deck.thick.mm", 0, 0, 1.5, "thickness of the cantle's deck"),
} as const;

/** Spring steel along each rail. */
export const SPRING = {
  thinMm: of("frame.spring.thick.mm", 1.8, 1.2, 2.5, "thickness of a spring steel"),
  wideMm: of("frame.spring.wide.mm", 20, 15, 25, "width of a spring steel"),
} as const;

/** Shear modulus of steel, MPa: within 3 % in all of them (from memory). */
export const STEEL_SHEAR_MPA = 79_000;

function of(
  id: string,
  base: number,
  lo: number,
  hi: number,
  says: string,
  provenance: Provenance = "from memory",
): Assumed {
  return { id, base, lo, hi, says, provenance };
}
