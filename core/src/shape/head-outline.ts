import { cos, tan } from "../engine/number/index.ts";
import type { BySide } from "../terms/places.ts";
import type { Head } from "./model.ts";
import { STRAIGHT_BELOW_CROWN_MM, type WantedHalf, type WantedHead } from "./wanted-head.ts";

type Place = readonly [number, number];
/** Each half from the crown to its tip: [y to the off side, z up] in mm, the inside of the crown at (0, 0). */
export type Outline = BySide<readonly Place[]>;

/** Pieces that stand for the round of the crown; the outline strays from it by less than 0.02 mm. */
const PIECES = 32;

/** Outline of the wanted head: both halves are those of the larger side. */
export function wantedOutline(wanted: WantedHead, face: "inside" | "outside", thicknessMm: number): Outline {
  const half = halfOutline(wanted, wanted.depthMm, face === "inside" ? 0 : thicknessMm);
  return { near: half.map(mirror), off: half };
}

/** Outline of a head as it stands, each half by its own angle; its spread is taken as even about the centre plane. */
export function headOutline(head: Head, face: "inside" | "outside"): Outline {
  const half = (side: "near" | "off") =>
    halfOutline(
      { halfSpreadMm: head.spreadMm / 2, halfAngleRad: head.halfAngleRad[side] },
      head.depthMm,
      face === "inside" ? 0 : head.thicknessMm,
    );
  return { near: half("near").map(mirror), off: half("off") };
}

const mirror = ([y, z]: Place): Place => [-y, z];

/**
 * A straight arm up from the tip, and a round from there to the crown that leaves the arm along it and meets the
 * centre plane level (a parabola: how a crown is rounded between is not read, and no template bears there).
 */
function halfOutline({ halfSpreadMm, halfAngleRad }: WantedHalf, depthMm: number, wallMm: number): Place[] {
  const slope = tan(halfAngleRad);
  const tip: Place = [halfSpreadMm + wallMm / cos(halfAngleRad), -depthMm];
  const armAt = (z: number) => Math.max(0, tip[0] - (z - tip[1]) * slope);
  const startZ = -Math.min(STRAIGHT_BELOW_CROWN_MM, depthMm / 2);
  const [start, corner]: [Place, Place] = [
    [armAt(startZ), startZ],
    [armAt(wallMm), wallMm],
  ];
  const round = Array.from({ length: PIECES + 1 }, (_, i): Place => {
    const t = i / PIECES;
    const [a, b, c] = [(1 - t) * (1 - t), 2 * t * (1 - t), t * t];
    return [b * corner[0] + c * start[0], a * wallMm + b * corner[1] + c * start[1]];
  });
  return [...round, tip];
}
