/*
 * Bending past yield: layered sections that remember every turn, an arch of such sections pulled apart or pushed
 * together at its tips.
 */

export {
  type Arch,
  type ArchState,
  type Half,
  type HalfState,
  halfTurnRad,
  letGo,
  loadTo,
  openingMm,
  type Piece,
  tipTravelMm,
  unbentArch,
} from "./arch.ts";
export { bendTo, release } from "./bend.ts";
export type { LayerGlance } from "./glance.ts";
export type { Law } from "./law.ts";
export { atMoisture } from "./moisture.ts";
export { bendToMoment, NoBalance } from "./path.ts";
export {
  elasticFlexibility,
  glanceFor,
  type Pass,
  type PassGlance,
  passAt,
  passFor,
  passTo,
} from "./press.ts";
export { readSection } from "./read-section.ts";
export { type RivetRow, rivetRow, timberBearingN } from "./rivets.ts";
export {
  bendingStiffness,
  type Layer,
  type Section,
  type SectionState,
  unbent,
  type Wear,
} from "./section.ts";
export type { LayerReading, SectionReading } from "./section-reading.ts";
export {
  damageOf,
  MILD_STEEL_LIFE,
  reversalsAt,
  type StrainLife,
} from "./strain-life.ts";
