import { atan, cos, pow, sin, tan } from "../engine/number/index.ts";
import { lastKept } from "../shape/last-kept.ts";
import type { Along, Half, Head, Tree } from "../shape/model.ts";
import type { TurnBelief } from "./setting.ts";

/** What a new head does to the two halves: the spread it adds inside the tips, and the turn of each half if it was read (a plate). */
export interface HeadMove {
  readonly changeMm: number;
  /** Half-angle of the new head less today's; undefined: it follows from the change (a press). */
  readonly halfTurnRad: number | undefined;
}

/**
 * Turn of each half for a change of spread, when the head only opens about its hinge.
 * Settled rule of the whole tree: atan(half the change / D), D from hinge to tips.
 */
export function halfTurnRad(changeMm: number, hingeToTipsMm: number): number {
  return atan(changeMm / 2 / hingeToTipsMm);
}

/** How much of the front's turn is left at x: r + (1 - r)(1 - xi)^n (assumption until a frame is solved). */
export function turnLeft(xMm: number, lengthMm: number, turn: TurnBelief): number {
  const xi = Math.min(1, Math.max(0, xMm / lengthMm));
  return turn.rearPart + (1 - turn.rearPart) * pow(1 - xi, turn.fade);
}

/**
 * The whole tree that a moved head makes. Each section of each half turns about the line of the hinges; the turn
 * fades toward the rear, and what a plate spreads without turning fades with it. The rail's shift is then quadratic
 * plus sag times the turn, since a sagging rail lies further from the hinge. mm, rad.
 */
export function treeAt(tree: Tree, move: HeadMove, turn: TurnBelief): Tree {
  if (move.changeMm === 0 && (move.halfTurnRad ?? 0) === 0) return tree;
  const { head, frontTurnRad, apartMm, tipDropMm } = movedHead(tree.head, move, turn);
  const hingeMm = tree.tipHeightMm + turn.hingePart * tree.head.depthMm;
  const left = lastKept((x: number) => turnLeft(x, tree.lengthMm, turn));
  const turnHalf = (half: Half) =>
    moved(
      half,
      hingeMm,
      (x) => frontTurnRad * left(x),
      (x) => apartMm * left(x),
    );
  const halves = { near: turnHalf(tree.halves.near), off: turnHalf(tree.halves.off) };
  return {
    ...tree,
    halves,
    head,
    tipHeightMm: tree.tipHeightMm - tipDropMm,
    channelMm: channelAfter(tree, halves),
  };
}

/** The head alone after a move: its halves' turn, what a plate spreads without turning, and how far the tips come down. */
export function movedHead(head: Head, move: HeadMove, turn: TurnBelief) {
  const hingeToTipsMm = turn.hingePart * head.depthMm;
  const frontTurnRad = move.halfTurnRad ?? halfTurnRad(move.changeMm, hingeToTipsMm);
  const apartMm = move.changeMm / 2 - hingeToTipsMm * tan(frontTurnRad);
  const tipDropMm = hingeToTipsMm * (cos(frontTurnRad) - 1) - (head.spreadMm / 2) * sin(frontTurnRad);
  const after: Head = {
    ...head,
    spreadMm: head.spreadMm + move.changeMm,
    // How the upper level moves depends on where the head really hinges, which is not known.
    spreadUpperMm: move.changeMm === 0 && frontTurnRad === 0 ? head.spreadUpperMm : undefined,
    depthMm: head.depthMm + tipDropMm,
    halfAngleRad: { near: head.halfAngleRad.near + frontTurnRad, off: head.halfAngleRad.off + frontTurnRad },
  };
  return { head: after, frontTurnRad, apartMm, tipDropMm };
}

function moved(half: Half, hingeMm: number, turnRad: Along, apartMm: Along): Half {
  const middle = (x: number) => half.innerEdgeMm(x) + (half.widthMm(x) / 2) * cos(half.faceAngleRad(x));
  const faceAngleRad = (x: number) => half.faceAngleRad(x) - turnRad(x);
  const middleAfter = (x: number) =>
    apartMm(x) + middle(x) * cos(turnRad(x)) - (half.heightMm(x) - hingeMm) * sin(turnRad(x));
  return {
    ...half,
    faceAngleRad,
    innerEdgeMm: (x) => middleAfter(x) - (half.widthMm(x) / 2) * cos(faceAngleRad(x)),
    heightMm: (x) => hingeMm + middle(x) * sin(turnRad(x)) + (half.heightMm(x) - hingeMm) * cos(turnRad(x)),
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
