import { atan } from "../../engine/number/index.ts";
import { eachStation } from "../../shape/along.ts";
import type { Tree } from "../../shape/model.ts";
import type { ByStation } from "../../terms/places.ts";
import type { HeadMove } from "./head-move.ts";
import { type Locked, lockedIn } from "./locked.ts";
import { PIECES } from "./places.ts";
import { bothSides, type Travel } from "./travel.ts";
import { fieldsOf, keepsOf } from "./tree-at.ts";

/** What a move does along the tree, against today. Opening is positive; both sides together, or their mean. */
export interface FrameFigures {
  readonly stations: ByStation<{
    /** Distance between the middles of the two bearing faces, mm. */
    readonly spreadMm: number;
    /** How much flatter the faces stand, rad. */
    readonly turnRad: number;
    /** How far they come up in the saddle, whose line from crown to cantle stays, mm. */
    readonly upMm: number;
  }>;
  /** The most by which the middle of a face leaves the straight line between its ends, up positive, mm. */
  readonly profileMm: number;
  /** Part of the front's turn that the rear station keeps. */
  readonly rearPart: number;
  /** What each half keeps at its hinge, rad: more than the arms show, since rails and cantle take some of it back. */
  readonly keptRad: number;
  readonly locked: Locked;
}

export function frameFigures(travel: Travel, move: HeadMove): FrameFigures {
  const keeps = keepsOf(travel, move);
  const fields = fieldsOf(travel, keeps);
  const { tree } = travel.beams;
  const mean = (what: "outMm" | "upMm" | "turnRad", x: number) =>
    bothSides((side) => fields[side][what](x)) / 2;
  const turnAt = (x: number) => atan(mean("turnRad", x));
  return {
    stations: eachStation((station) => {
      const x = tree.stationsMm[station];
      return { spreadMm: 2 * mean("outMm", x), turnRad: turnAt(x), upMm: mean("upMm", x) };
    }),
    profileMm: profileOf(tree, (x) => mean("upMm", x)),
    rearPart: mean("turnRad", tree.stationsMm.rear) / mean("turnRad", 0),
    keptRad: keeps.turnRad,
    locked: lockedIn(travel, keeps),
  };
}

/** Looked for at the ends of the rail's pieces. */
function profileOf({ stationsMm: { rear } }: Tree, upMm: (x: number) => number): number {
  let most = 0;
  for (let i = 1; i < PIECES.rail; i++) {
    const part = i / PIECES.rail;
    const off = upMm(part * rear) - (1 - part) * upMm(0) - part * upMm(rear);
    if (Math.abs(off) > Math.abs(most)) most = off;
  }
  return most;
}
