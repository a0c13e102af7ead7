import { cos } from "../engine/number/index.ts";
import type { SurveyedSaddle } from "../survey/case.ts";
import { type ByStation, type Side, STATIONS, type Station } from "../terms/places.ts";
import { eachStation, quadraticWeights, weighted } from "./along.ts";
import type { Doubts } from "./doubt.ts";
import { type Face, panelFace, type Thickness } from "./faces.ts";
import { lastKept } from "./last-kept.ts";
import type { Along, Deviations, Half } from "./model.ts";

/** Narrowest face that is calculated with, mm; a narrower figure comes only from carrying a taper on past its stations. */
const NARROWEST_MM = 10;

export interface BearingAt {
  readonly face: Face;
  readonly thickness: Thickness;
}

/** What bears at one station and side, in one draw: always the panel's face, whichever was read. */
export function bearingAt(
  saddle: SurveyedSaddle,
  station: Station,
  side: Side,
  doubts: Doubts,
): (deviations: Deviations) => BearingAt {
  const read = saddle.bearing[station][side];
  const take = (word: keyof typeof read) =>
    doubts.take(`saddle.bearing.${station}.${side}.${word}`, read[word]);
  const [inner, middle, outer] = [take("inner"), take("middle"), take("outer")];
  const [edge, width, angle, under] = [
    take("innerEdge"),
    take("width"),
    take("faceAngle"),
    take("underStraightEdge"),
  ];
  return (deviations) => {
    const thickness = { inner: inner(deviations), middle: middle(deviations), outer: outer(deviations) };
    const face: Face = {
      innerEdgeMm: edge(deviations),
      widthMm: width(deviations),
      faceAngleRad: angle(deviations),
      // Heights are counted from the straight-edge laid along the middle over the bearing.
      heightMm: -under(deviations),
    };
    return { face: saddle.bearing.face === "rail" ? panelFace(face, thickness) : face, thickness };
  };
}

/** One half along x: quadratics through its three stations. */
export function halfOf(at: ByStation<BearingAt>, xs: ByStation<number>): Half {
  const weights = lastKept((x: number) => quadraticWeights(xs, x));
  const along = (word: keyof Face): Along => {
    const values = eachStation((station) => at[station].face[word]);
    return (x) => weighted(weights(x), values);
  };
  const width = along("widthMm");
  return {
    innerEdgeMm: along("innerEdgeMm"),
    widthMm: (x) => Math.max(NARROWEST_MM, width(x)),
    faceAngleRad: along("faceAngleRad"),
    heightMm: along("heightMm"),
    thicknessMm: eachStation((station) => at[station].thickness),
  };
}

/** Distance from the centre plane of the middle of a face, mm. */
export const middleOf = ({ innerEdgeMm, widthMm, faceAngleRad }: Face): number =>
  innerEdgeMm + (widthMm / 2) * cos(faceAngleRad);

export const inOrder = (xs: ByStation<number>, apartMm: number): boolean =>
  STATIONS.every((station, i) => i === 0 || xs[station] - xs[STATIONS[i - 1] ?? "front"] >= apartMm);
