import type { SurveyedHorse } from "../../survey/case.ts";
import { SIDES, ZONES, type Zone } from "../../terms/places.ts";
import type { HorseFindings } from "./orders.ts";

type Touched = { readonly grade: number; readonly twice: "yes" | "no" | "not-tried" };

/** Zones on the midline: one hand there counts for both sides. */
const MIDLINE: readonly Zone[] = ["withers-top", "breastbone"];

/** Every reaction noted, zone by zone and side by side. */
function touched(horse: SurveyedHorse): readonly Touched[] {
  return ZONES.flatMap((zone) => SIDES.flatMap((side) => horse.hands[zone]?.[side] ?? []));
}

/** A zone, or one side of it, that is left out was not looked at. */
export function handsOn(horse: SurveyedHorse): HorseFindings["hands"] {
  const whole = ZONES.every((zone) => {
    const at = horse.hands[zone];
    const sides = SIDES.filter((side) => at?.[side] !== undefined).length;
    return sides === 2 || (sides === 1 && MIDLINE.includes(zone));
  });
  return whole ? "all-zones" : "not-all-zones";
}

/**
 * Grade 3 anywhere is strong. A grade 2 that was there again (or was not tried again) is clear.
 * A grade 1 that was there again, or a grade 2 that was not, is mild; at more than one place it counts as clear.
 * A grade 1 that was not there again is nothing. Common practice, no source.
 */
export function pain(horse: SurveyedHorse): HorseFindings["pain"] {
  const all = touched(horse);
  if (all.some((at) => at.grade === 3)) return "strong";
  if (all.some((at) => at.grade === 2 && at.twice !== "no")) return "clear-or-several";
  const mild = all.filter((at) => at.grade === 2 || (at.grade === 1 && at.twice !== "no")).length;
  if (mild > 1) return "clear-or-several";
  return mild === 1 ? "mild-at-one-place" : "none";
}
