import type { SurveyedSaddle } from "../../core/src/survey/case.ts";
import { saddleSchema } from "../../core/src/survey/saddle.ts";

/** Face at one station: inner edge and width mm, angle degrees, height under the straight-edge mm, thickness mm. */
export interface FaceRead {
  readonly innerEdge: number;
  readonly width: number;
  readonly faceAngle: number;
  readonly underStraightEdge: number;
  readonly inner: number;
  readonly middle: number;
  readonly outer: number;
}

export const FACES = {
  front: {
    innerEdge: 40,
    width: 105,
    faceAngle: 42,
    underStraightEdge: 70,
    inner: 22,
    middle: 25,
    outer: 22,
  },
  mid: { innerEdge: 42, width: 112, faceAngle: 30, underStraightEdge: 52, inner: 26, middle: 30, outer: 28 },
  rear: { innerEdge: 45, width: 118, faceAngle: 22, underStraightEdge: 45, inner: 30, middle: 38, outer: 34 },
} as const;

export const HEAD = {
  face: "inside",
  spreadTips: 205,
  spreadUpper: 110,
  upperBelowCrown: 35,
  depth: 95,
  crownRadius: 32,
  thickness: 9,
  halfAngleNear: 45,
  halfAngleOff: 44,
} as const;

type Faces = { readonly [S in keyof typeof FACES]: FaceRead };

export function modelSaddle(head: object = {}, bearing: object = {}, faces: Faces = FACES): SurveyedSaddle {
  const station = (face: FaceRead, channel: number) => ({ near: face, off: face, channel });
  return saddleSchema.parse({
    name: "invented",
    head: { ...HEAD, ...head },
    bearing: {
      face: "panel",
      front: station(faces.front, 75),
      mid: station(faces.mid, 78),
      rear: station(faces.rear, 82),
      panelEnd: 430,
      deepestSeat: 200,
      strapNear: 120,
      strapOff: 122,
      ...bearing,
    },
  });
}
