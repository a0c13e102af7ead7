import {
  type Frame,
  rectangle,
  type SectionStiffness,
  type Vector,
} from "../../core/src/engine/frame/index.ts";
import { along, arc, clamped, Joined, loads, standing } from "./build.ts";

/** Two arches joined by two lengthwise beams, as the reference cases state them. mm, N. */
export interface TwoArches {
  readonly frame: Frame;
  readonly crown: number;
  readonly tips: readonly [number, number];
  readonly frontFeet: readonly [number, number];
  readonly rearFeet: readonly [number, number];
  /** Nodes of the beam on the +y side, front first. */
  readonly beam: readonly number[];
}

export interface Shape {
  readonly lengthMm: number;
  readonly frontR: number;
  readonly rearR: number;
  /** Straight arms that hang from the front feet; 0: the feet are the tips. */
  readonly armMm: number;
  readonly armDeg: number;
  /** How far the beams hang between their ends. */
  readonly sagMm: number;
  readonly faceDeg: readonly [front: number, rear: number];
  readonly pieces: { readonly arch: number; readonly beam: number; readonly arm: number };
  readonly sections: {
    readonly front: SectionStiffness;
    readonly rear: SectionStiffness;
    readonly beam: SectionStiffness;
  };
}

const LENGTHWISE = (): Vector => [1, 0, 0];

export function twoArches(shape: Shape): TwoArches {
  const { lengthMm: L, frontR, rearR, armMm, armDeg, sagMm, faceDeg, pieces, sections } = shape;
  const joined = new Joined();
  joined.add(arc(0, frontR, pieces.arch), sections.front, LENGTHWISE);
  joined.add(arc(L, rearR, pieces.arch), sections.rear, LENGTHWISE);
  const place =
    (side: number) =>
    (part: number): Vector => [
      L * part,
      side * (frontR + (rearR - frontR) * part),
      -4 * sagMm * part * (1 - part),
    ];
  for (const side of [-1, 1]) {
    const places = along(pieces.beam, place(side));
    joined.add(places, sections.beam, (_, part) => {
      const face = ((faceDeg[0] + (faceDeg[1] - faceDeg[0]) * part) * Math.PI) / 180;
      const piece = Math.min(pieces.beam - 1, Math.floor(part * pieces.beam));
      return cross([0, side * Math.sin(face), Math.cos(face)], between(places[piece], places[piece + 1]));
    });
  }
  const out = (armDeg * Math.PI) / 180;
  const armAt =
    (side: number) =>
    (part: number): Vector => [
      0,
      side * (frontR + armMm * part * Math.sin(out)),
      -armMm * part * Math.cos(out),
    ];
  if (armMm > 0)
    for (const side of [-1, 1]) joined.add(along(pieces.arm, armAt(side)), sections.front, LENGTHWISE);
  joined.number([0, 0, frontR]);
  const pair = (x: number, y: number, z = 0): [number, number] => [
    joined.node([x, -y, z]),
    joined.node([x, y, z]),
  ];
  const [, tipY, tipZ] = armAt(1)(1);
  return {
    crown: joined.node([0, 0, frontR]),
    tips: pair(0, tipY, tipZ),
    frontFeet: pair(0, frontR),
    rearFeet: pair(L, rearR),
    beam: along(pieces.beam, place(1)).map((one) => joined.node(one)),
    frame: joined.frame(),
  };
}

/** The face's normal is made square to the beam, and its width is square to both: so the reference's author laid it. */
const cross = ([a, b, c]: Vector, [x, y, z]: Vector): Vector => [b * z - c * y, c * x - a * z, a * y - b * x];
const between = (from: Vector = [0, 0, 0], to: Vector = [0, 0, 0]): Vector => [
  to[0] - from[0],
  to[1] - from[1],
  to[2] - from[2],
];

/** The laminated case; everything is cut `refined` times finer. */
export function laminated(refined = 1): TwoArches {
  const front = rectangle({ wideMm: 50, thinMm: 14, modulusMPa: 60000, shearMPa: 4000 });
  const rear = rectangle({ wideMm: 50, thinMm: 10, modulusMPa: 13000, shearMPa: 900 });
  const beam = rectangle({ wideMm: 55, thinMm: 10, modulusMPa: 13000, shearMPa: 900 });
  return twoArches({
    lengthMm: 400,
    frontR: 55,
    rearR: 90,
    armMm: 110,
    armDeg: 25,
    sagMm: 20,
    faceDeg: [45, 30],
    pieces: { arch: 32 * refined, beam: 32 * refined, arm: 8 * refined },
    sections: { front, rear, beam },
  });
}

/** Moved by a pair of forces that opens two nodes. */
export function opened(
  { frame, crown }: TwoArches,
  [low, high]: readonly [number, number],
  pairN: number,
): Float64Array {
  return standing(frame, clamped(crown)).under(
    loads(frame, [
      [low, 1, -pairN],
      [high, 1, pairN],
    ]),
  );
}

export const apart = (moved: Float64Array, [low, high]: readonly [number, number]): number =>
  (moved[6 * high + 1] ?? Number.NaN) - (moved[6 * low + 1] ?? Number.NaN);
