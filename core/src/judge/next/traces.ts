import { aboutPath, asItIs, type Say } from "../../survey/about-path.ts";

/** A trace that is not there, or that lacks something, as the shape names it: by station and temper, not by its place in a list. */
const TRACE = /^(horses\[(\d+)\]\.traces)\.(front|mid|rear)\.(cold|warm)/;

/** The missing traces that are waited for, at the first question of their horse's tracings. */
export function missingTraces(
  questionPath: string,
  waitsFor: readonly string[],
): readonly { readonly path: string }[] {
  return waitsFor
    .filter((place) => {
      const traces = TRACE.exec(place)?.[1];
      return traces !== undefined && questionPath === `${traces}[0].points`;
    })
    .map((path) => ({ path }));
}

/** The reading that a path asks for, in words. `say`: each of its parts in another language. */
export const readingSays = (path: string, say: Say = asItIs): string =>
  maybeSaid(traceSays(path), say) ?? aboutPath(path, say);

const maybeSaid = (words: string | undefined, say: Say): string | undefined =>
  words === undefined ? undefined : say(words);

/** A missing trace in words; undefined for any other place. */
export function traceSays(path: string): string | undefined {
  const [, , horse, station, temper] = TRACE.exec(path) ?? [];
  if (station === undefined) return undefined;
  return `the ${temper} trace at the ${station}, horse ${Number(horse) + 1}`;
}
