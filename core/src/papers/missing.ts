import { aboutPath } from "../survey/about-path.ts";
import { STATIONS } from "../terms/places.ts";

const SIDE_WORDS: readonly string[] = ["near side", "off side"];
const PLACES: readonly string[] = [...STATIONS, ...SIDE_WORDS];
/** A trace that is not there has no place in the case yet. */
const TRACE = /\.traces\.(front|mid|rear)\.(cold|warm)$/;

/** What was missing in words, each quantity once with the places where it is missing. */
export function missingSays(paths: readonly string[]): readonly string[] {
  const places = new Map<string, Set<string>>();
  for (const path of paths) {
    const [, station, temper] = TRACE.exec(path) ?? [];
    const parts = station === undefined ? aboutPath(path).split(", ") : [`trace, ${temper}`, station];
    const what = parts.filter((part) => !PLACES.includes(part)).join(", ");
    const at = parts.filter((part) => PLACES.includes(part));
    places.set(what, new Set([...(places.get(what) ?? []), ...at]));
  }
  return [...places].map(([what, at]) => (at.size === 0 ? what : `${what} (${placesSay(at)})`));
}

function placesSay(at: ReadonlySet<string>): string {
  const sides = SIDE_WORDS.filter((side) => at.has(side));
  const stations = STATIONS.filter((station) => at.has(station));
  return [...stations, ...(sides.length === 2 ? ["both sides"] : sides)].join(", ");
}
