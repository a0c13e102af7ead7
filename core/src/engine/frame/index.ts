/*
 * Frames of straight beams in space: linear, small turns, sections that stay flat and square to their axis. What a
 * beam keeps of an earlier yielding is imposed, and the state it leaves in the whole comes out.
 */

export { assembled, type Stiffness } from "./assemble.ts";
export { evenField } from "./even-field.ts";
export { type Kept, loadsOf } from "./kept.ts";
export {
  type Beam,
  DIRECTIONS,
  type Direction,
  elementsOf,
  type Frame,
  frameOf,
  nodesOf,
  PER_NODE,
  PER_SECTION,
  type SectionStiffness,
  type Support,
  type Vector,
} from "./model.ts";
export { added, motionOf, placeOf } from "./read.ts";
export { endForces, PER_ELEMENT, peakStressMPa, reactions, type Strain, strainAt } from "./recover.ts";
export { type Rectangle, rectangle, together, torsionConstant } from "./section.ts";
export { type Held, held, type Mechanism } from "./solve.ts";
