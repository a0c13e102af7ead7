import { atan, cos, tan } from "../../engine/number/index.ts";
import { lastKept } from "../../shape/last-kept.ts";
import type { Along, Half, Tree } from "../../shape/model.ts";
import type { Side } from "../../terms/places.ts";
import { type HeadMove, leverOfTree, movedHead } from "./head-move.ts";
import { bothSides, type Fields, type Travel } from "./travel.ts";

/** What each half keeps at its hinge so that a move comes out at the tips once the tree is let go; the same on both sides. */
export interface Keeps {
  readonly turnRad: number;
  readonly shiftMm: number;
}

/**
 * Both halves keep the same turn. Rails and cantle take some of it back, so it is more than the arms show. A plate's
 * own angle and spread are two demands: what its turn does not spread, it spreads by standing out of its hinge.
 */
export function keepsFor({ turned, shifted }: Travel, outMm: number, turnTan: number, turns: boolean): Keeps {
  const mean = (of: Travel["turned"], what: "outMm" | "turnRad") =>
    bothSides((kept) => bothSides((side) => of[kept].tips[side][what])) / 2;
  const [a, b] = [mean(turned, "outMm"), mean(turned, "turnRad")];
  if (!turns) return { turnRad: outMm / a, shiftMm: 0 };
  const [c, d] = [mean(shifted(), "outMm"), mean(shifted(), "turnRad")];
  const size = a * d - c * b;
  return { turnRad: (outMm * d - turnTan * c) / size, shiftMm: (turnTan * a - outMm * b) / size };
}

/** The move of a travel's tree as what its halves keep. */
export function keepsOf(travel: Travel, move: HeadMove): Keeps {
  const read = move.halfTurnRad;
  return keepsFor(travel, move.changeMm / 2, read === undefined ? 0 : tan(read), read !== undefined);
}

/**
 * The whole tree that a moved head makes: the head's own halves turn by their finite angle, and what the frame does
 * along the rails is scaled to it. Shift, height and the tangent of the face's turn are linear in what is kept, so at
 * 20 mm and the front, where the head's own turn is finite, they are up to 0.6 mm off (evidence/frame). mm, rad.
 */
export function treeAt(travel: Travel, move: HeadMove): Tree {
  const { tree } = travel.beams;
  if (move.changeMm === 0 && (move.halfTurnRad ?? 0) === 0) return tree;
  const { head, tipDropMm } = movedHead(tree.head, move, leverOfTree(travel));
  const fields = fieldsOf(travel, keepsOf(travel, move));
  const halves = { near: carried(tree.halves.near, fields.near), off: carried(tree.halves.off, fields.off) };
  return {
    ...tree,
    halves,
    head,
    tipHeightMm: tree.tipHeightMm - tipDropMm,
    channelMm: channelAfter(tree, halves),
  };
}

/** How each half goes along x for what both keep. */
export function fieldsOf(travel: Travel, { turnRad, shiftMm }: Keeps): { readonly [S in Side]: Fields } {
  const of = (side: Side): Fields => {
    const parts = [
      { by: turnRad, unit: travel.turned.near.halves[side] },
      { by: turnRad, unit: travel.turned.off.halves[side] },
      ...(shiftMm === 0
        ? []
        : [
            { by: shiftMm, unit: travel.shifted().near.halves[side] },
            { by: shiftMm, unit: travel.shifted().off.halves[side] },
          ]),
    ];
    const along = (what: keyof Fields): Along =>
      lastKept((x: number) => parts.reduce((sum, { by, unit }) => sum + by * unit[what](x), 0));
    return { outMm: along("outMm"), upMm: along("upMm"), turnRad: along("turnRad") };
  };
  return { near: of("near"), off: of("off") };
}

function carried(half: Half, { outMm, upMm, turnRad }: Fields): Half {
  const faceAngleRad = lastKept((x: number) => half.faceAngleRad(x) - atan(turnRad(x)));
  const middle = (x: number) => half.innerEdgeMm(x) + (half.widthMm(x) / 2) * cos(half.faceAngleRad(x));
  return {
    ...half,
    faceAngleRad,
    innerEdgeMm: (x) => middle(x) + outMm(x) - (half.widthMm(x) / 2) * cos(faceAngleRad(x)),
    heightMm: (x) => half.heightMm(x) + upMm(x),
  };
}

function channelAfter(tree: Tree, halves: Tree["halves"]): Tree["channelMm"] {
  const at = (station: "front" | "mid" | "rear") => {
    const today = tree.channelMm[station];
    if (today === undefined) return undefined;
    const x = tree.stationsMm[station];
    const widened = (side: "near" | "off") => halves[side].innerEdgeMm(x) - tree.halves[side].innerEdgeMm(x);
    return today + widened("near") + widened("off");
  };
  return { front: at("front"), mid: at("mid"), rear: at("rear") };
}
