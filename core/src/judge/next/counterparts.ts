import type { Survey } from "../../survey/case.ts";
import { getAt, stepsOf } from "../../survey/path.ts";
import { isRead, type Measured } from "../../survey/reading.ts";

const MOUNTING = /^saddle\.mounting\.(.+)$/;
const PLATE = /^platesAtHand\[\d+\]\.mounting\.(.+)$/;

/** Where the same thing is read again: on the other side, or on the part that has to match. */
function placesOf(survey: Survey, path: string): readonly string[] {
  const onSaddle = MOUNTING.exec(path)?.[1];
  if (onSaddle !== undefined)
    return survey.platesAtHand.map((_, i) => `platesAtHand[${i}].mounting.${onSaddle}`);
  const onPlate = PLATE.exec(path)?.[1];
  if (onPlate !== undefined) return [`saddle.mounting.${onPlate}`];
  const swapped = path.replace(/near|off|Near|Off/g, (side) => SWAP[side] ?? side);
  return swapped === path ? [] : [swapped];
}

const SWAP: { readonly [side: string]: string } = { near: "off", off: "near", Near: "Off", Off: "Near" };

const isMeasured = (found: unknown): found is Measured =>
  typeof found === "object" && found !== null && ("absent" in found || "instrument" in found);

/**
 * What a reading's counterparts were read at, as typed: the likeliest values of it. Five values of a wide range may miss
 * the one that fits, and a place that has to match another only matters at the other's value.
 */
export function counterparts(survey: Survey, path: string): readonly string[] {
  return placesOf(survey, path).flatMap((place) => {
    const found = getAt(survey, stepsOf(place));
    return isMeasured(found) && isRead(found) && found.repeats.length === 0 ? [found.typed] : [];
  });
}
