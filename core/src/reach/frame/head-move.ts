import { atan, cos, sin, tan } from "../../engine/number/index.ts";
import type { Head } from "../../shape/model.ts";
import { SIDES } from "../../terms/places.ts";
import { armOf, downLine } from "./places.ts";
import type { Travel } from "./travel.ts";
import { bothSides } from "./travel.ts";

/** What a new head does to the two halves: the spread it adds inside the tips, and the turn of each half if it was read (a plate). */
export interface HeadMove {
  readonly changeMm: number;
  readonly halfTurnRad: number | undefined;
}

/** Where a half's tip lies from the line that the half turns about, mean of both sides, mm. */
export interface Lever {
  /** Below it: what a turn makes of the spread. */
  readonly downMm: number;
  /** Outside it: what a turn makes of the height. */
  readonly outMm: number;
}

/** Of a head by itself, with nothing that holds its halves: the hinge lies so far down the middle of its wall. */
export function leverOfHead(head: Head, hingeOffMm: number): Lever {
  const hinges = SIDES.map((side) => downLine(armOf(head, side), hingeOffMm));
  const [out, up] = [0, 1].map(
    (i) => hinges.reduce((sum, hinge) => sum + (hinge[i] ?? 0), 0) / hinges.length,
  );
  return { downMm: head.depthMm + (up ?? 0), outMm: head.spreadMm / 2 - (out ?? 0) };
}

/** Of a head in its tree: rails and cantle hold the halves, so they turn about another line than their hinge. */
export function leverOfTree({ turned }: Travel): Lever {
  const sum = (what: "outMm" | "upMm" | "turnRad") =>
    bothSides((kept) => bothSides((side) => turned[kept].tips[side][what]));
  return { downMm: sum("outMm") / sum("turnRad"), outMm: sum("upMm") / sum("turnRad") };
}

/** Turn of each half when the head only opens: atan(half the change / how far its tips lie below the line it turns about). */
export const halfTurnRad = (changeMm: number, { downMm }: Lever): number => atan(changeMm / 2 / downMm);

/** The head after a move: its halves' finite turn, what a plate spreads without turning, and how far the tips come down. */
export function movedHead(head: Head, { changeMm, halfTurnRad: read }: HeadMove, lever: Lever) {
  const frontTurnRad = read ?? halfTurnRad(changeMm, lever);
  const apartMm = changeMm / 2 - lever.downMm * tan(frontTurnRad);
  const tipDropMm = lever.downMm * (cos(frontTurnRad) - 1) - lever.outMm * sin(frontTurnRad);
  const after: Head = {
    ...head,
    spreadMm: head.spreadMm + changeMm,
    // How the upper level moves depends on where the head really hinges, which is not known.
    spreadUpperMm: changeMm === 0 && frontTurnRad === 0 ? head.spreadUpperMm : undefined,
    depthMm: head.depthMm + tipDropMm,
    halfAngleRad: { near: head.halfAngleRad.near + frontTurnRad, off: head.halfAngleRad.off + frontTurnRad },
  };
  return { head: after, frontTurnRad, apartMm, tipDropMm };
}
