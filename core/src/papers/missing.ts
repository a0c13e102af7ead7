import { aboutPath } from "../survey/about-path.ts";
import { STATIONS } from "../terms/places.ts";

const PLACES: readonly string[] = [...STATIONS, "near side", "off side"];

/** What was missing in words, each quantity once with the places where it is missing. */
export function missingSays(paths: readonly string[]): readonly string[] {
  const places = new Map<string, Set<string>>();
  for (const path of paths) {
    const parts = aboutPath(path).split(", ");
    const what = parts.filter((part) => !PLACES.includes(part)).join(", ");
    const at = parts.filter((part) => PLACES.includes(part));
    places.set(what, new Set([...(places.get(what) ?? []), ...at]));
  }
  return [...places].map(([what, at]) => (at.size === 0 ? what : `${what} (${[...at].join(", ")})`));
}
