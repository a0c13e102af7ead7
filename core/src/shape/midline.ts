import { type Misses, smoothOver } from "../engine/curve/smooth-over.ts";
import { jetAt } from "../engine/curve/spline.ts";
import type { SurveyedHorse } from "../survey/case.ts";
import { POINT_MM } from "./trace-doubt.ts";

type Profile = NonNullable<SurveyedHorse["profile"]>;

/** The profile must come this near to the front and the rear trace, mm (assumption); beyond its ends it goes on straight. */
const MAY_END_SHORT_MM = 60;
/** Points nearer to each other than this along the back are taken as one, mm. */
const SAME_PLACE_MM = 0.5;

/** Height of the midline at x behind the front station, mm, zero at the front station. */
export type Midline = (xMm: number) => number;

/** Smooths the profile; undefined where it does not reach from `fromMm` to `toMm` or has fewer than three places. */
export function midlineOf(profile: Profile, fromMm: number, toMm: number): Midline | undefined {
  const places = placesOf(profile);
  const [first, last] = [places[0], places[places.length - 1]];
  if (places.length < 3 || first === undefined || last === undefined) return undefined;
  if (first[0] > fromMm + MAY_END_SHORT_MM || last[0] < toMm - MAY_END_SHORT_MM) return undefined;
  const knots = Float64Array.from(places, ([x]) => x);
  const [smooth] = smoothOver(knots, [Float64Array.from(places, ([, z]) => z)], POINT_MM, missesUp);
  if (smooth === undefined) return undefined;
  const spline = { knots, ...smooth };
  const [front] = jetAt(spline, 0);
  return (x) => jetAt(spline, x)[0] - front;
}

/** A height is read at its place, so the whole of a miss counts. */
const missesUp: Misses = ([fit], [read]) => {
  if (!fit || !read) return 0;
  return read.reduce((sum, one, i) => sum + (one - fit.value[i]!) * (one - fit.value[i]!), 0);
};

/** In order along the back; points of one place become their mean. */
function placesOf({ points }: Profile): readonly (readonly [number, number])[] {
  const sorted = points.map(([x, z]): [number, number] => [x, z]).sort((a, b) => a[0] - b[0]);
  const places: [number, number, number][] = [];
  for (const [x, z] of sorted) {
    const before = places[places.length - 1];
    if (before === undefined || x - before[0] >= SAME_PLACE_MM) places.push([x, z, 1]);
    else [before[1], before[2]] = [(before[1] * before[2] + z) / (before[2] + 1), before[2] + 1];
  }
  return places.map(([x, z]) => [x, z]);
}
