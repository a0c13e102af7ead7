import { STATIONS, ZONES } from "../terms/places.ts";
import { stepsOf } from "./path.ts";
import { fieldAt } from "./schema-fields.ts";

/** Where along the horse, on which side, in which state: said after the reading's own words. */
const PLACE_WORDS: ReadonlyMap<string, string> = new Map([
  ...STATIONS.map((station) => [station, station] as const),
  ...ZONES.map((zone) => [zone, zone.replace(/-/g, " ")] as const),
  ["near", "near side"],
  ["off", "off side"],
  ["laidOn", "laid on"],
  ["girthed", "girthed up"],
  ["riderUp", "rider up"],
  ["halfSeat", "half-seat"],
  ["moved", "in movement"],
]);

const ITEM_WORDS: ReadonlyMap<string, string> = new Map([
  ["horses", "horse"],
  ["traces", "trace"],
  ["alterations", "alteration"],
  ["platesAtHand", "plate"],
  ["plates", "plate"],
  ["points", "point"],
  ["repeats", "repeat"],
]);

/** English words to those of another language. */
export type Say = (english: string) => string;
export const asItIs: Say = (english) => english;

/** The nearest described place at or above a path: a typed point is described by its trace. */
function leafAbout(path: string): string {
  const field = fieldAt(path);
  if (field && field.about !== "") return field.about;
  const shorter = path.replace(/(\.[^.[\]]+|\[\d*\])$/, "");
  return shorter === path || shorter === "" ? "" : leafAbout(shorter);
}

/**
 * Plain words for a path of the case: `saddle.head.spreadTips` is "spread at the tips, on the face named",
 * `horses[1].girthed.clearanceTop` is "clearance over the top of the withers, girthed up, horse 2".
 * The path itself where the case has no such place. `say`: each of its parts in another language.
 */
export function aboutPath(path: string, say: Say = asItIs): string {
  const about = leafAbout(path);
  const steps = stepsOf(path);
  const places = steps.flatMap((step) => (typeof step === "string" ? (PLACE_WORDS.get(step) ?? []) : []));
  const items = steps.flatMap((step, at) => {
    const list = ITEM_WORDS.get(String(steps[at - 1]));
    return typeof step === "string" || list === undefined || (list === "horse" && step === 0)
      ? []
      : `${list} ${step + 1}`;
  });
  const unsaid = places.filter((place) => !about.split(/[ ,]+/).includes(place.split(" ")[0] ?? place));
  const parts = [about, ...unsaid, ...items].filter((words) => words !== "");
  return parts.map(say).join(", ") || path;
}
