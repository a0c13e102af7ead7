import { U_PER_SD } from "../../engine/central.ts";
import { cos } from "../../engine/number/index.ts";
import type { SurveyedHorse, SurveyedSaddle } from "../../survey/case.ts";
import { isRead } from "../../survey/reading.ts";
import type { MeasuredLimit } from "../input.ts";
import { unevenness } from "./figure.ts";

/** How well a template is offered up: one standard deviation, mm (assumption 0.5 to 2). */
const OFFERED_MM = 1;
/** Half-angle used where none was read, and how far off it may be; it only turns a feeler into a width (assumption 35 to 57 degrees). */
const HALF_ANGLE_RAD = 0.785;

/** Unevenness of the feelers on each side. */
export function feelerLimits(horse: SurveyedHorse, path: string): readonly MeasuredLimit[] {
  const of = (name: keyof SurveyedHorse["template"]) => ({
    path: `${path}.template.${name}`,
    measured: horse.template[name],
  });
  return [
    unevenness("feeler", { at: "near", side: "near" }, [of("nearTop"), of("nearMiddle"), of("nearTip")]),
    unevenness("feeler", { at: "off", side: "off" }, [of("offTop"), of("offMiddle"), of("offTip")]),
  ];
}

/**
 * Spread inside the tips less the wanted spread, from the feelers at both tips of a template offered up.
 * A feeler is held square to the point, so each counts 1 / cos(half-angle) across. Negative: the head is narrower.
 */
export function templateSpread(saddle: SurveyedSaddle, horse: SurveyedHorse, path: string): MeasuredLimit {
  const { nearTip, offTip } = horse.template;
  const place = { rule: "spread-wanted", at: "template" };
  if (!isRead(nearTip) || !isRead(offTip)) {
    const missing = [
      ...(isRead(nearTip) ? [] : [`${path}.template.nearTip`]),
      ...(isRead(offTip) ? [] : [`${path}.template.offTip`]),
    ];
    return { ...place, value: undefined, u: undefined, missing };
  }
  const { halfAngleNear, halfAngleOff } = saddle.head;
  const near = cos(isRead(halfAngleNear) ? halfAngleNear.value : HALF_ANGLE_RAD);
  const off = cos(isRead(halfAngleOff) ? halfAngleOff.value : HALF_ANGLE_RAD);
  const parts = [
    nearTip.own / near,
    offTip.own / off,
    nearTip.shared / near + offTip.shared / off,
    OFFERED_MM,
  ];
  const sd = Math.sqrt(parts.reduce((sum, part) => sum + part * part, 0));
  return { ...place, value: nearTip.value / near + offTip.value / off, u: U_PER_SD * sd, missing: [] };
}
