import { Doubts } from "../../shape/doubt.ts";
import { throughLegMm } from "../../shape/faces.ts";
import type { Deviations, Uncertain } from "../../shape/model.ts";
import { spreadAtMm } from "../../shape/plate.ts";
import { isRead } from "../../survey/reading.ts";
import type { StockPlate } from "../../survey/stock.ts";

/** What one measured piece has at a level, in any draw: spread inside, mm, and half-angle, rad. */
export interface Piece {
  readonly plate: StockPlate;
  readonly index: number;
  at(deviations: Deviations): { readonly spreadMm: number; readonly halfAngleRad: number };
  readonly uncertain: readonly Uncertain[];
}

/** A piece that cannot be brought to the level, and why: paths not read, or its legs end above it. */
export interface LeftOut {
  readonly plate: StockPlate;
  readonly index: number;
  readonly lacking: readonly string[];
}

/** Every piece of a stock at one level below the crown, mm, on the straight of the legs. */
export function piecesAt(
  plates: readonly StockPlate[],
  levelMm: number,
): { readonly pieces: readonly Piece[]; readonly leftOut: readonly LeftOut[] } {
  const all = plates.map((plate, index) => pieceAt(plate, index, levelMm));
  return {
    pieces: all.filter((one) => "at" in one),
    leftOut: all.filter((one) => "lacking" in one),
  };
}

function pieceAt(plate: StockPlate, index: number, levelMm: number): Piece | LeftOut {
  const doubts = new Doubts();
  const path = (word: string) => `stock.plates[${index}].${word}`;
  if (plate.face === "not-said") doubts.lack(path("face"));
  const spread = doubts.take(path("spread"), plate.spread);
  const below = doubts.take(path("belowCrown"), plate.belowCrown);
  const angle = doubts.take(path("halfAngle"), plate.halfAngle);
  const leg = plate.face === "outside" ? doubts.take(path("legThickness"), plate.legThickness) : undefined;
  if (isRead(plate.depth) && plate.depth.value < levelMm) doubts.lack(path("depth"));
  if (doubts.lacking.length > 0) return { plate, index, lacking: doubts.lacking };
  return {
    plate,
    index,
    uncertain: doubts.uncertain,
    at: (deviations) => {
      const halfAngleRad = angle(deviations);
      const walls = leg ? 2 * throughLegMm(leg(deviations), halfAngleRad) : 0;
      return {
        spreadMm: spreadAtMm(spread(deviations) - walls, below(deviations), levelMm, halfAngleRad),
        halfAngleRad,
      };
    },
  };
}
