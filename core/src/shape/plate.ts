import type { Plate, SurveyedSaddle } from "../survey/case.ts";
import { Doubts } from "./doubt.ts";
import { throughLegMm } from "./faces.ts";
import type { Deviations, Lacking, Uncertain } from "./model.ts";

/** A loose plate stands for the fitted head with this much more doubt, mm (assumption). */
const LOOSE_MM = 2;

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

/** Plate `index` of the plates at hand, as fitted in this saddle's head; its spread was read on the head's named face. */
export function buildPlate(plate: Plate, index: number, saddle: SurveyedSaddle): PlateBelief | Lacking {
  const doubts = new Doubts();
  const path = (word: string) => `platesAtHand.${index}.${word}`;
  const outside = saddle.head.face === "outside";
  if (saddle.head.face === "not-said") doubts.lack("saddle.head.face");
  const spread = doubts.take(path("spreadTips"), plate.spreadTips);
  const angle = outside
    ? doubts.take(path("halfAngle"), plate.halfAngle)
    : doubts.takeIfRead(path("halfAngle"), plate.halfAngle);
  const thickness = outside ? doubts.take("saddle.head.thickness", saddle.head.thickness) : undefined;
  if (doubts.lacking.length > 0) return { lacking: doubts.lacking };
  const loose: Uncertain = { id: path("loose.mm"), kind: "normal", mean: 0, sd: LOOSE_MM };
  const fitted = plate.asFitted === "yes";
  return {
    at: (deviations) => {
      const halfAngleRad = angle?.(deviations);
      const walls =
        thickness && halfAngleRad !== undefined ? 2 * throughLegMm(thickness(deviations), halfAngleRad) : 0;
      return {
        spreadMm: spread(deviations) - walls + (fitted ? 0 : (deviations[loose.id] ?? 0)),
        halfAngleRad,
      };
    },
    uncertain: fitted ? doubts.uncertain : [...doubts.uncertain, loose],
  };
}
