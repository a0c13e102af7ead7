import type { SurveyedSaddle } from "../survey/case.ts";
import type { Lacking } from "./model.ts";
import { believed, type PlateBelief } from "./plate.ts";

/** The head that position `index` of the inserts makes, both sides the same. It was read as fitted, on the head's named face. */
export function buildInsert(
  { spreadTips, halfAngle }: SurveyedSaddle["inserts"]["positions"][number],
  index: number,
  saddle: SurveyedSaddle,
): PlateBelief | Lacking {
  return believed(
    {
      path: (word) => `saddle.inserts.positions.${index}.${word}`,
      spread: ["spreadTips", spreadTips],
      halfAngle,
      face: saddle.head.face,
      facePath: "saddle.head.face",
      leg: ["saddle.head.thickness", saddle.head.thickness],
      fitted: true,
    },
    saddle,
  );
}
