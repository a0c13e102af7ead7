import {
  type Frame,
  type Held,
  held,
  type Mechanism,
  PER_SECTION,
  placeOf,
  rectangle,
  type SectionStiffness,
  together,
} from "../../engine/frame/index.ts";
import { cos, sin } from "../../engine/number/index.ts";
import type { Tree } from "../../shape/model.ts";
import { SIDES, type Side } from "../../terms/places.ts";
import { STEEL_MPA } from "../bend/head-priors.ts";
import { layeredStiffness } from "./layers.ts";
import { nodeOf, PIECES, type Places, placesOf, RAIL_FRONT, RAIL_REAR, REAR_CROWN } from "./places.ts";
import type { TreeSections } from "./sections.ts";
import { STEEL_SHEAR_MPA } from "./unknown.ts";

/** A tree as beams: its places, its frame, and the frame held so that crown and cantle stay where the seat has them. */
export interface TreeBeams {
  readonly tree: Tree;
  readonly sections: TreeSections;
  readonly places: Places;
  readonly frame: Frame;
  readonly held: Held;
}

/** Elements of one side: arch, rail, rear arch; the deck comes last of all. */
export const SIDE_ELEMENTS = PIECES.head + PIECES.rail + PIECES.cantle;
export const elementOf = (side: Side, along: number): number => (side === "near" ? 0 : SIDE_ELEMENTS) + along;
const DECK = 2 * SIDE_ELEMENTS;
/** How far the deck reaches along the back, mm (from memory). */
const DECK_LONG_MM = 80;

/** Ends of all elements, away from the crown. The same for every tree. */
const ENDS = Int32Array.from([
  ...SIDES.flatMap((side) =>
    Array.from({ length: SIDE_ELEMENTS }, (_, i) => [nodeOf(side, i), nodeOf(side, i + 1)]).flat(),
  ),
  nodeOf("near", RAIL_REAR),
  nodeOf("off", RAIL_REAR),
]);

/** Six and no more: the crown in its place and upright, the cantle's crown behind it. So the seat's line stays level. */
const SUPPORTS = [
  { node: 0, direction: "x" },
  { node: 0, direction: "y" },
  { node: 0, direction: "z" },
  { node: 0, direction: "turn about x" },
  { node: REAR_CROWN, direction: "y" },
  { node: REAR_CROWN, direction: "z" },
] as const;

/** The tree's frame in one draw; or where it could move, were its readings no tree. */
export function beamsOf(tree: Tree, sections: TreeSections): TreeBeams | Mechanism {
  const places = placesOf(tree, sections);
  const frame: Frame = {
    nodes: places.nodes,
    ends: ENDS,
    across: new Float64Array(3 * (DECK + 1)),
    stiffness: new Float64Array(PER_SECTION * (DECK + 1)),
  };
  const { modulusMPa, shearMPa } = sections.stuff;
  const plain = (wideMm: number, thinMm: number) => rectangle({ wideMm, thinMm, modulusMPa, shearMPa });
  const head = layeredStiffness(sections.head);
  const cantle = plain(sections.cantle.wideMm, sections.cantle.thinMm);
  for (const side of SIDES) {
    for (let i = 0; i < SIDE_ELEMENTS; i++) {
      const e = elementOf(side, i);
      if (i >= RAIL_FRONT && i < RAIL_REAR) layRail(frame, tree, sections, side, e, i - RAIL_FRONT);
      else lay(frame, e, [1, 0, 0], i < RAIL_FRONT ? head : cantle);
    }
  }
  lay(frame, DECK, [1, 0, 0], plain(DECK_LONG_MM, sections.deckThinMm));
  const stands = held(frame, SUPPORTS);
  return stands.ok ? { tree, sections, places, frame, held: stands } : stands;
}

function lay(
  { across, stiffness }: Frame,
  e: number,
  axis2: readonly [number, number, number],
  section: SectionStiffness,
): void {
  across.set(axis2, 3 * e);
  stiffness[PER_SECTION * e] = section.stretching;
  stiffness[PER_SECTION * e + 1] = section.twisting;
  stiffness[PER_SECTION * e + 2] = section.bending2;
  stiffness[PER_SECTION * e + 3] = section.bending3;
}

/** One piece of a rail: as wide as the bearing is there beside its middle, and square to the face's normal. */
function layRail(
  frame: Frame,
  tree: Tree,
  { rail, spring, stuff }: TreeSections,
  side: Side,
  e: number,
  piece: number,
): void {
  const half = tree.halves[side];
  const x = ((piece + 0.5) / PIECES.rail) * tree.stationsMm.rear;
  const face = half.faceAngleRad(x);
  const wideMm = (rail.wideMm * half.widthMm(x)) / half.widthMm(tree.stationsMm.rear / 2);
  const wood = rectangle({ wideMm, thinMm: rail.thinMm, ...stuff });
  const steel =
    spring === undefined ? [] : [rectangle({ ...spring, modulusMPa: STEEL_MPA, shearMPa: STEEL_SHEAR_MPA })];
  const along = RAIL_FRONT + piece;
  const [a, b] = [placeOf(frame, nodeOf(side, along)), placeOf(frame, nodeOf(side, along + 1))];
  const [dx, dy, dz] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const [ny, nz] = [(side === "near" ? -1 : 1) * sin(face), cos(face)];
  lay(frame, e, [ny * dz - nz * dy, nz * dx, -ny * dx], together([wood, ...steel]));
}
