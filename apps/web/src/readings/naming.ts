import { STATIONS } from "../road.ts";

const PLACES: readonly string[] = [...STATIONS, "near", "off"];

/** The place that a row of fields shares, by the steps above them: "front, near", "under point, off", "incidents". */
export function placesIn(path: string): string {
  const steps = path.split(".").slice(0, -1);
  const shared = steps.filter((step) => PLACES.includes(step) || step.includes("-"));
  return shared.map(choiceWords).join(", ");
}

/** Something to choose, in words: "cannot-be-seen" is "cannot be seen". */
export const choiceWords = (id: string) => id.replaceAll("-", " ");
