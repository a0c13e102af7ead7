import { isRead, type Measured } from "../../survey/reading.ts";
import type { Said, Sign } from "../../terms/knowing.ts";

type Known = "no" | "not-known" | "yes";

/** A sign or an answer, reduced: anything but a plain no or yes is not known. */
export function known(word: Said | Sign): Known {
  return word === "no" || word === "yes" ? word : "not-known";
}

/** Several questions as one: one yes is yes, one unknown keeps it from being no. */
export function anyOf(words: readonly (Said | Sign)[]): Known {
  if (words.includes("yes")) return "yes";
  return words.every((word) => word === "no") ? "no" : "not-known";
}

/** The value of a reading, or undefined where there is none. */
export function valueOf(measured: Measured): number | undefined {
  return isRead(measured) ? measured.value : undefined;
}
