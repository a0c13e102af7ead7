import type { SurveyedSaddle } from "../survey/case.ts";
import { Doubts } from "./doubt.ts";
import { throughLegMm } from "./faces.ts";
import type { Lacking } from "./model.ts";
import type { PlateBelief } from "./plate.ts";

export type InsertPosition = SurveyedSaddle["inserts"]["positions"][number];

/**
 * The head that a position of the inserts makes, both sides the same. It was read as fitted, on the head's named face, so
 * nothing is added for a loose piece.
 */
export function buildInsert(
  position: InsertPosition,
  index: number,
  { head }: SurveyedSaddle,
): PlateBelief | Lacking {
  const doubts = new Doubts();
  const path = (word: string) => `saddle.inserts.positions.${index}.${word}`;
  const outside = head.face === "outside";
  if (head.face === "not-said") doubts.lack("saddle.head.face");
  const spread = doubts.take(path("spreadTips"), position.spreadTips);
  const angle = outside
    ? doubts.take(path("halfAngle"), position.halfAngle)
    : doubts.takeIfRead(path("halfAngle"), position.halfAngle);
  const thickness = outside ? doubts.take("saddle.head.thickness", head.thickness) : undefined;
  if (doubts.lacking.length > 0) return { lacking: doubts.lacking };
  return {
    at: (deviations) => {
      const halfAngleRad = angle?.(deviations);
      const walls =
        thickness && halfAngleRad !== undefined ? 2 * throughLegMm(thickness(deviations), halfAngleRad) : 0;
      return { spreadMm: spread(deviations) - walls, halfAngleRad };
    },
    uncertain: doubts.uncertain,
  };
}
