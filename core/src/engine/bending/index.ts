/*
 * Bending past yield: layered sections that remember every turn, an arch of such sections pulled apart or pushed
 * together at its tips, and the closed forms that check them.
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
export type { Law } from "./law.ts";
export { bendToMoment, NoBalance } from "./path.ts";
export { elasticFlexibility, type Pass, passFor, passTo } from "./press.ts";
export { type LayerReading, readSection, type SectionReading } from "./read-section.ts";
export {
  bendingStiffness,
  type Layer,
  type Section,
  type SectionState,
  unbent,
  type Wear,
} from "./section.ts";
