import type { Survey } from "../survey/case.ts";
import type { MeasuredLimit } from "./input.ts";
import { bearingLimits } from "./measure/bearing.ts";
import { clearanceLimits } from "./measure/clearance.ts";
import { placeLimits } from "./measure/place.ts";
import { squareLimits } from "./measure/square.ts";
import { feelerLimits, templateSpread } from "./measure/template.ts";

/**
 * Every limit that is a reading, or the difference of two, for one horse: value in the rule's unit with U
 * (half of the central 95 %), or the paths of what is missing. Computed limits are added by the road.
 */
export function measureLimits(survey: Survey, horseIndex: number): readonly MeasuredLimit[] {
  const horse = survey.horses[horseIndex];
  if (horse === undefined) throw new Error(`no horse ${horseIndex} in this case`);
  const path = `horses[${horseIndex}]`;
  const { saddle } = survey;
  return [
    ...squareLimits(saddle, saddle.looked.level === "bare"),
    ...clearanceLimits(horse, path),
    ...placeLimits(saddle, horse, path),
    ...feelerLimits(horse, path),
    templateSpread(saddle, horse, path),
    ...bearingLimits(survey, horse, path),
  ];
}
