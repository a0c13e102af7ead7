import { evenField, type Kept, loadsOf, motionOf, placeOf } from "../../engine/frame/index.ts";
import { cos } from "../../engine/number/index.ts";
import type { Along } from "../../shape/model.ts";
import { type BySide, SIDES, type Side } from "../../terms/places.ts";
import { nodeOf, PIECES, RAIL_FRONT } from "./places.ts";
import { elementOf, type TreeBeams } from "./tree-frame.ts";

/** How the middle of one half's bearing face goes, along x: outward and up in mm, and how it turns flatter, rad. */
export interface Fields {
  readonly outMm: Along;
  readonly upMm: Along;
  readonly turnRad: Along;
}

/** How one tip goes, and its arm with it. */
export interface TipMoved {
  readonly outMm: number;
  readonly upMm: number;
  readonly turnRad: number;
}

/** What the whole tree does for one unit of something that one half keeps at its hinge. */
export interface Unit {
  readonly kept: Kept;
  /** Displacements and turns of all nodes. */
  readonly moved: Float64Array;
  readonly halves: BySide<Fields>;
  readonly tips: BySide<TipMoved>;
}

/** A tree's answer to what is kept at one hinge a side: linear, so any setting is a sum of these. */
export interface Travel {
  readonly beams: TreeBeams;
  readonly hingeOffMm: number;
  /** Per radian that the near or the off half keeps, opening. */
  readonly turned: BySide<Unit>;
  /** Per mm by which a half stands out of its hinge without turning: what a wider plate does. */
  shifted(): BySide<Unit>;
}

/** No hinge lies nearer to where the rail meets the arm than this part of the arch (assumption). */
const LAST_HINGE = 0.9;

export function travelOf(beams: TreeBeams, hingeOffMm: number): Travel {
  const unit = (make: (side: Side) => Kept): BySide<Unit> => ({
    near: unitOf(beams, make("near")),
    off: unitOf(beams, make("off")),
  });
  let shifted: BySide<Unit> | undefined;
  return {
    beams,
    hingeOffMm,
    turned: unit((side) => ({
      ...hingeOf(beams, side, hingeOffMm),
      turn: [outward(side), 0, 0],
      shift: [0, 0, 0],
    })),
    shifted: () => {
      shifted ??= unit((side) => ({
        ...hingeOf(beams, side, hingeOffMm),
        turn: [0, 0, 0],
        shift: [0, outward(side), 0],
      }));
      return shifted;
    },
  };
}

const outward = (side: Side): number => (side === "near" ? -1 : 1);

/** The element and the place in it where a half hinges, so far from the crown along its arch. */
function hingeOf({ frame }: TreeBeams, side: Side, hingeOffMm: number): Pick<Kept, "element" | "at"> {
  const [[, ay, az], [, by, bz]] = [placeOf(frame, nodeOf(side, 0)), placeOf(frame, nodeOf(side, 1))];
  // All pieces of the arch are cut equally long along its line, so the first tells of all.
  const piece = Math.sqrt((by - ay) * (by - ay) + (bz - az) * (bz - az));
  const along = Math.min(LAST_HINGE * PIECES.head, hingeOffMm / piece);
  const index = Math.min(PIECES.head - 1, Math.floor(along));
  return { element: elementOf(side, index), at: along - index };
}

function unitOf(beams: TreeBeams, kept: Kept): Unit {
  const moved = beams.held.under(loadsOf(beams.frame, [kept]));
  const side = (of: Side) => fieldsOf(beams, moved, of);
  const tip = (of: Side) => tipMoved(beams, moved, of);
  return {
    kept,
    moved,
    halves: { near: side("near"), off: side("off") },
    tips: { near: tip("near"), off: tip("off") },
  };
}

/** Each section of a rail carries its bearing face with it. */
function fieldsOf({ tree, frame }: TreeBeams, moved: Float64Array, side: Side): Fields {
  const half = tree.halves[side];
  const [out, up, turn] = [0, 1, 2].map(() => new Float64Array(PIECES.rail + 1)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const sign = outward(side);
  for (let i = 0; i <= PIECES.rail; i++) {
    const node = nodeOf(side, RAIL_FRONT + i);
    const x = (i / PIECES.rail) * tree.stationsMm.rear;
    const { shift, turn: turns } = motionOf(moved, node);
    const [, y, z] = placeOf(frame, node);
    const turned = sign * turns[0];
    const middle = half.innerEdgeMm(x) + (half.widthMm(x) / 2) * cos(half.faceAngleRad(x));
    out[i] = sign * shift[1] + turned * (z - half.heightMm(x));
    up[i] = shift[2] + turned * (middle - sign * y);
    turn[i] = turned;
  }
  const field = (values: Float64Array) => evenField(values, tree.stationsMm.rear);
  return { outMm: field(out), upMm: field(up), turnRad: field(turn) };
}

/** Below the joint nothing loads the arm: it goes as the joint does. */
function tipMoved({ tree, frame }: TreeBeams, moved: Float64Array, side: Side): TipMoved {
  const sign = outward(side);
  const node = nodeOf(side, RAIL_FRONT);
  const { shift, turn } = motionOf(moved, node);
  const [, y, z] = placeOf(frame, node);
  const turnRad = sign * turn[0];
  return {
    outMm: sign * shift[1] + turnRad * (z - tree.tipHeightMm),
    upMm: shift[2] + turnRad * (tree.head.spreadMm / 2 - sign * y),
    turnRad,
  };
}

export const bothSides = (of: (side: Side) => number): number =>
  SIDES.reduce((sum, side) => sum + of(side), 0);
