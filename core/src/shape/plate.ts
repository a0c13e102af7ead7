import { atan, tan } from "../engine/number/index.ts";
import type { Plate, SurveyedSaddle } from "../survey/case.ts";
import type { Measured } from "../survey/reading.ts";
import type { StockPlate } from "../survey/stock.ts";
import { Doubts } from "./doubt.ts";
import { throughLegMm } from "./faces.ts";
import type { Deviations, Head, Lacking, Uncertain } from "./model.ts";

/**
 * A loose plate stands for the fitted head with this much more doubt, mm, standard (assumption): 95 of 100 then lie
 * within 3.9 mm, as a polymer arch by its own set moves a plate by 1 to 4 mm either way (from memory).
 */
export const LOOSE_MM = 2;

/** The head that a plate makes once it is in. */
export interface PlateHead {
  /** Inside the tips, mm. */
  readonly spreadMm: number;
  /** To the tree's centre plane; undefined where it was not read. */
  readonly halfAngleRad: number | undefined;
}

export interface PlateBelief {
  at(deviations: Deviations): PlateHead;
  readonly uncertain: readonly Uncertain[];
}

/** Plate `index` of the plates at hand, as fitted in this saddle's head; its spread was read at the tips, on the head's named face. */
export function buildPlate(plate: Plate, index: number, saddle: SurveyedSaddle): PlateBelief | Lacking {
  return believed(
    {
      path: (word) => `platesAtHand.${index}.${word}`,
      spread: ["spreadTips", plate.spreadTips],
      halfAngle: plate.halfAngle,
      face: saddle.head.face,
      facePath: "saddle.head.face",
      leg: ["saddle.head.thickness", saddle.head.thickness],
      fitted: plate.asFitted === "yes",
    },
    saddle,
  );
}

/** Plate `index` of a stock, as fitted in this saddle's head: it was read loose, at a level of its own. */
export function buildStockPlate(
  plate: StockPlate,
  index: number,
  saddle: SurveyedSaddle,
): PlateBelief | Lacking {
  const path = (word: string) => `stock.plates[${index}].${word}`;
  return believed(
    {
      path,
      spread: ["spread", plate.spread],
      halfAngle: plate.halfAngle,
      face: plate.face,
      facePath: path("face"),
      leg: [path("legThickness"), plate.legThickness],
      below: plate.belowCrown,
      fitted: false,
    },
    saddle,
  );
}

interface AsRead {
  path(word: string): string;
  readonly spread: readonly [word: string, read: Measured];
  readonly halfAngle: Measured;
  readonly face: "inside" | "outside" | "not-said";
  readonly facePath: string;
  readonly leg: readonly [path: string, read: Measured];
  /** Level of the spread below the crown; undefined: at the tips. */
  readonly below?: Measured;
  readonly fitted: boolean;
}

/** The head that something exchanged makes, out of what was read of it. */
export function believed(read: AsRead, { head }: SurveyedSaddle): PlateBelief | Lacking {
  const doubts = new Doubts();
  if (read.face === "not-said") doubts.lack(read.facePath);
  const spread = doubts.take(read.path(read.spread[0]), read.spread[1]);
  const needsAngle = read.face === "outside" || read.below !== undefined;
  const anglePath = read.path("halfAngle");
  const angle = needsAngle
    ? doubts.take(anglePath, read.halfAngle)
    : doubts.takeIfRead(anglePath, read.halfAngle);
  const leg = read.face === "outside" ? doubts.take(...read.leg) : undefined;
  const below = read.below && doubts.take(read.path("belowCrown"), read.below);
  const depthPath = "saddle.head.depth";
  const depth = below ? doubts.take(depthPath, head.depth) : doubts.takeIfRead(depthPath, head.depth);
  if (doubts.lacking.length > 0) return { lacking: doubts.lacking };
  const loose: Uncertain = { id: read.path("loose.mm"), kind: "normal", mean: 0, sd: LOOSE_MM };
  return {
    at: (deviations) => {
      const set = read.fitted ? 0 : (deviations[loose.id] ?? 0);
      const angleRad = angle?.(deviations);
      const depthMm = depth?.(deviations);
      const inside =
        spread(deviations) -
        (leg && angleRad !== undefined ? 2 * throughLegMm(leg(deviations), angleRad) : 0);
      const atTips =
        below && angleRad !== undefined && depthMm !== undefined
          ? spreadAtMm(inside, below(deviations), depthMm, angleRad)
          : inside;
      // What springs it open or shut turns its halves about the crown.
      const turned = depthMm === undefined ? 0 : atan(set / 2 / depthMm);
      return { spreadMm: atTips + set, halfAngleRad: angleRad === undefined ? undefined : angleRad + turned };
    },
    uncertain: read.fitted ? doubts.uncertain : [...doubts.uncertain, loose],
  };
}

/**
 * Spread at one level below the crown out of the spread at another, mm; both on the straight of the legs
 * (STRAIGHT_BELOW_CROWN_MM and lower). Derived: each leg leaves the centre plane at its half-angle.
 */
export function spreadAtMm(
  spreadMm: number,
  belowMm: number,
  wantedBelowMm: number,
  halfAngleRad: number,
): number {
  return spreadMm + 2 * (wantedBelowMm - belowMm) * tan(halfAngleRad);
}

/**
 * Change of spread at the tips, mm, when the included angle opens by so much about the crown: twice the depth times the
 * tangent of half of it. 10 degrees are 17 mm at 95 mm and 20 mm only at 115 mm. Derived.
 */
export function spreadForIncludedMm(includedRad: number, depthMm: number): number {
  return 2 * depthMm * tan(includedRad / 2);
}

/** Half-angle of a head with another plate in: as read, else as its halves turn about the crown to the new spread. */
export function angleWithPlate(today: Head, { spreadMm, halfAngleRad }: PlateHead): number {
  const mean = (today.halfAngleRad.near + today.halfAngleRad.off) / 2;
  return halfAngleRad ?? mean + atan((spreadMm - today.spreadMm) / 2 / today.depthMm);
}
