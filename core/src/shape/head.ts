import type { SurveyedSaddle } from "../survey/case.ts";
import { Doubts, type Drawn } from "./doubt.ts";
import { throughLegMm } from "./faces.ts";
import type { Deviations, Head, HeadBelief, Lacking } from "./model.ts";

/** Inner radius of the crown and thickness of the head where nobody read them, mm (from memory). */
const CROWN_RADIUS_MM = { base: 35, lo: 20, hi: 55 };
const THICKNESS_MM = { base: 10, lo: 5, hi: 14 };

/**
 * The head from its readings; with doubts given, its readings are added to them. All spreads of the result are
 * inside ones, whichever face was read.
 */
export function headOf(saddle: SurveyedSaddle, doubts: Doubts): (deviations: Deviations) => Head {
  const { head } = saddle;
  const path = (word: string) => `saddle.head.${word}`;
  const outside = head.face === "outside";
  if (head.face === "not-said") doubts.lack(path("face"));
  const spread = doubts.take(path("spreadTips"), head.spreadTips);
  const depth = doubts.take(path("depth"), head.depth);
  const angles = {
    near: doubts.take(path("halfAngleNear"), head.halfAngleNear),
    off: doubts.take(path("halfAngleOff"), head.halfAngleOff),
  };
  const upper = doubts.takeIfRead(path("spreadUpper"), head.spreadUpper);
  const below = doubts.takeIfRead(path("upperBelowCrown"), head.upperBelowCrown);
  const crown = doubts.takeOrAssume(path("crownRadius"), head.crownRadius, "mm", CROWN_RADIUS_MM);
  const thickness: Drawn = outside
    ? doubts.take(path("thickness"), head.thickness)
    : doubts.takeOrAssume(path("thickness"), head.thickness, "mm", THICKNESS_MM);
  return (deviations) => {
    const halfAngleRad = { near: angles.near(deviations), off: angles.off(deviations) };
    const thick = thickness(deviations);
    const walls = outside
      ? throughLegMm(thick, halfAngleRad.near) + throughLegMm(thick, halfAngleRad.off)
      : 0;
    return {
      spreadMm: spread(deviations) - walls,
      spreadUpperMm: upper && upper(deviations) - walls,
      upperBelowCrownMm: below?.(deviations),
      depthMm: depth(deviations),
      crownRadiusMm: crown(deviations),
      thicknessMm: thick,
      halfAngleRad,
    };
  };
}

/** The head alone, for the front section and the template; or the paths of what is missing. */
export function buildHead(saddle: SurveyedSaddle): HeadBelief | Lacking {
  const doubts = new Doubts();
  const at = headOf(saddle, doubts);
  return doubts.lacking.length > 0 ? { lacking: doubts.lacking } : { at, uncertain: doubts.uncertain };
}
