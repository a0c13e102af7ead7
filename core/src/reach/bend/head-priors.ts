import type { Assumed } from "../../terms/assumed.ts";
import type { Provenance } from "../../terms/provenance.ts";

function of(id: string, base: number, lo: number, hi: number, provenance: Provenance, says: string): Assumed {
  return { id, base, lo, hi, says, provenance };
}

/** Plates of spring steel: this part of all heads (assumption 0.05 to 0.2); yield stress in MPa, 600 and more from memory. */
export const HARDER_PLATES = { part: 0.12, loMPa: 400, hiMPa: 750 } as const;
const HARDER_SAYS = `yield stress of the plates; in ${100 * HARDER_PLATES.part} of 100 heads drawn it is spring steel's, ${HARDER_PLATES.loMPa} to ${HARDER_PLATES.hiMPa}`;

/**
 * Laminated beech with a plate over and a plate under it. Published figures: Wood Handbook (FPL-GTR-190) for beech,
 * Shigley table A-20 and EN 10025-2 for mild steel. None of them is a limit.
 */
export const WOOD_HEAD = {
  woodThickness: of("bend.wood.thickness.mm", 10, 7, 14, "from memory", "wood between the plates, thick"),
  woodWidth: of("bend.wood.width.mm", 45, 35, 60, "from memory", "wood between the plates, wide"),
  overThickness: of("bend.over.thickness.mm", 2.5, 2, 3.5, "from memory", "plate over the head, thick"),
  overWidth: of("bend.over.width.mm", 28, 20, 40, "from memory", "plate over the head, wide"),
  underThickness: of("bend.under.thickness.mm", 3, 2.5, 4, "from memory", "plate under the head, thick"),
  underWidth: of("bend.under.width.mm", 30, 22, 40, "from memory", "plate under the head, wide"),
  rivets: of("bend.rivets.1", 3.5, 3, 4, "from memory", "rivets a side"),
  rivetDiameter: of("bend.rivet.diameter.mm", 5, 4, 6, "from memory", "rivet, thick"),
  yieldMPa: of("bend.yield.MPa", 260, 200, 400, "published", HARDER_SAYS),
  hardeningMPa: of("bend.hardening.MPa", 1000, 0, 4000, "assumption", "hardening of the plates"),
  woodModulusMPa: of(
    "bend.wood.modulus.MPa",
    12_000,
    9000,
    14_500,
    "published",
    "stiffness of the wood at 12 %",
  ),
  crushMPa: of("bend.wood.crush.MPa", 50, 42, 58, "published", "stress that crushes the wood at 12 %"),
  ruptureMPa: of("bend.wood.rupture.MPa", 100, 70, 120, "published", "stress that breaks the wood at 12 %"),
  moisture: of("bend.wood.moisture.percent", 11, 7, 16, "from memory", "moisture of the wood"),
  composite: of("bend.composite.1", 0.5, 0.1, 0.7, "derived", "how much plates and wood bend as one, fresh"),
  worn: of("bend.composite.worn.part", 0.5, 0.3, 0.8, "assumption", "what is left of that after slip"),
  slip: of("bend.slip.strain", 0.002, 0.001, 0.004, "assumption", "slip by which that is worn, as strain"),
  stiffMm: of("bend.crown.stiff.mm", 25, 0.5, 45, "from memory", "stiffer middle of the head, each side"),
  stiffPart: of("bend.crown.thicker.part", 1.1, 1, 1.25, "assumption", "wood there, times as thick"),
} as const;

/** Green beech over beech at 12 %, for the law of moisture. Wood Handbook (FPL-GTR-190): at 12 % published, green from memory. */
export const GREEN_PART = { modulus: 9500 / 11_900, crush: 24.5 / 50.3, rupture: 59 / 103 } as const;

/** Polymer with a bar of steel moulded in. */
export const BARRED_HEAD = {
  polymerThickness: of("bend.polymer.thickness.mm", 8, 5, 14, "from memory", "polymer of the head, thick"),
  polymerWidth: of("bend.polymer.width.mm", 50, 35, 70, "assumption", "polymer of the head, wide"),
  barThickness: of("bend.bar.thickness.mm", 3, 2, 4, "assumption", "bar in the head, thick"),
  barWidth: of("bend.bar.width.mm", 25, 15, 35, "assumption", "bar in the head, wide"),
  barYieldMPa: of(
    "bend.bar.yield.MPa",
    260,
    200,
    400,
    "assumption",
    "yield stress of the bar, mild or stainless",
  ),
  barModulusMPa: of(
    "bend.bar.modulus.MPa",
    200_000,
    193_000,
    207_000,
    "from memory",
    "stiffness of the bar, stainless to mild",
  ),
  barHardeningMPa: of("bend.bar.hardening.MPa", 1500, 0, 4000, "assumption", "hardening of the bar"),
  polymerModulusMPa: of(
    "bend.polymer.modulus.MPa",
    1800,
    1000,
    2800,
    "published",
    "stiffness of the polymer, damp to dry nylon",
  ),
} as const;

/** Modulus of mild steel, MPa. Published: Shigley, table A-5 (207 GPa); EN 1993-1-1 (210 GPa). */
export const STEEL_MPA = 205_000;
/** Shear strength of a rivet, MPa: 0.6 of 400. Published: EN 1993-1-8 without its partial factor, from memory. */
export const RIVET_SHEAR_MPA = 240;
/** Bearing strength of a thin mild plate on a rivet, MPa: 1.5 of 400 (from memory). */
export const PLATE_BEARING_MPA = 600;
/** Density of beech at 12 %, kg/m3. Published: Wood Handbook, G 0.64 x 1.12. */
export const BEECH_KG_M3 = 717;
