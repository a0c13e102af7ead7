import type { Assumption } from "../../terms/assumption.ts";
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

/** Laminated beech, along the grain. The handbook's row is for 12 % of moisture. */
export const WOODEN = {
  modulusMPa: of(
    "frame.wood.modulus.MPa",
    12000,
    9000,
    14500,
    "stiffness of the wood along the grain",
    "published",
  ),
  shearMPa: of("frame.wood.shear.MPa", 900, 600, 1100, "stiffness of the wood in shear"),
  railThinMm: of("frame.rail.thick.mm", 10, 7, 14, "thickness of the rails"),
  railWideMm: of("frame.rail.wide.mm", 50, 35, 70, "mean width of the rails"),
  cantleThinMm: of("frame.cantle.thick.mm", 10, 7, 14, "thickness of the rear arch"),
  deckThinMm: of("frame.deck.thick.mm", 3, 0, 8, "thickness of the cantle's deck"),
} as const;

/** Moulded polymer as it has taken up the air's moisture. */
export const MOULDED = {
  modulusMPa: of("frame.polymer.modulus.MPa", 1800, 1000, 3000, "stiffness of the polymer"),
  shearMPa: of("frame.polymer.shear.MPa", 650, 360, 1080, "stiffness of the polymer in shear"),
  railThinMm: of("frame.rail.thick.mm", 6, 4, 9, "thickness of the rails"),
  railWideMm: of("frame.rail.wide.mm", 50, 35, 70, "mean width of the rails"),
  cantleThinMm: of("frame.cantle.thick.mm", 6, 4, 9, "thickness of the rear arch"),
  deckThinMm: of("frame.deck.thick.mm", 0, 0, 1.5, "thickness of the cantle's deck"),
} as const;

/** Plates of steel at the head, and how far they and the wood work as one. */
export const JOINED = {
  composite: of(
    "frame.composite.1",
    0.25,
    0.1,
    0.7,
    "part of full joint action of plates and wood",
    "derived",
  ),
  rivets: of("frame.rivets.a.side.count", 3, 3, 4, "rivets a side"),
} as const;

/** Spring steel along each rail. */
export const SPRING = {
  thinMm: of("frame.spring.thick.mm", 1.8, 1.2, 2.5, "thickness of a spring steel"),
  wideMm: of("frame.spring.wide.mm", 20, 15, 25, "width of a spring steel"),
} as const;

/** What stands in the place of readings of the head's stuff that were not taken, mm (from memory). */
export const HEAD_UNREAD = {
  wood: { thin: { base: 10, lo: 7, hi: 14 }, wide: { base: 45, lo: 35, hi: 60 } },
  polymer: { thin: { base: 8, lo: 5, hi: 14 }, wide: { base: 50, lo: 40, hi: 70 } },
  under: { thin: { base: 3, lo: 2.5, hi: 4 }, wide: { base: 30, lo: 22, hi: 40 } },
  over: { thin: { base: 2.5, lo: 2, hi: 3.5 }, wide: { base: 28, lo: 20, hi: 40 } },
  bar: { thin: { base: 4, lo: 3, hi: 5 }, wide: { base: 25, lo: 20, hi: 30 } },
} as const;

/** Steel, EN 10025 grades, N/mm2: within 3 % in all of them (published: Young's modulus; shear modulus from memory). */
export const STEEL_MPA = { modulus: 205000, shear: 79000 } as const;

function of(
  id: string,
  base: number,
  lo: number,
  hi: number,
  says: string,
  provenance: Provenance = "from memory",
): Assumption {
  return { id, base, lo, hi, says, provenance };
}
