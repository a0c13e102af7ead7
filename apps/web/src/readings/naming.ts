import { aboutPath, fieldAt, STATIONS } from "../road.ts";

const PLACES: readonly string[] = [...STATIONS, "near", "off"];

/**
 * What a field is called in its table. Inside a list or under a heading its place stands there already; a group's own
 * title is not said again in each line.
 */
export function labelOf(path: string, group: string, placeIsSaid: boolean): string {
  const about = (placeIsSaid && fieldAt(path)?.about) || aboutPath(path);
  const words = about.replace(new RegExp(`, (${group.toLowerCase()}|horse \\d)$`), "") + sideOf(path, about);
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The side at the end of a field's own name, where its words do not tell it. */
function sideOf(path: string, about: string): string {
  const side = /(Near|Off)$/.exec(path)?.[1]?.toLowerCase();
  return side === undefined || new RegExp(`\\b${side}\\b`).test(about) ? "" : `, ${side} side`;
}

/** The place that a row of fields shares, by the steps above them: "front, near", "under point, off", "incidents". */
export function placesIn(path: string): string {
  const steps = path.split(".").slice(0, -1);
  const shared = steps.filter((step) => PLACES.includes(step) || step.includes("-"));
  return shared.map(choiceWords).join(", ");
}

/** Something to choose, in words: "cannot-be-seen" is "cannot be seen". */
export const choiceWords = (id: string) => id.replaceAll("-", " ");
