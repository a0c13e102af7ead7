import { type ByStation, STATIONS, type Station } from "../terms/places.ts";

/** What each station counts for at x: the quadratic through three stations. */
export function quadraticWeights(xs: ByStation<number>, x: number): ByStation<number> {
  const [a, b, c] = [x - xs.front, x - xs.mid, x - xs.rear];
  const [ab, bc, ac] = [xs.front - xs.mid, xs.mid - xs.rear, xs.front - xs.rear];
  return { front: (b * c) / (ab * ac), mid: (a * c) / (-ab * bc), rear: (a * b) / (ac * bc) };
}

/** The same between the outer stations, and straight beyond them with the slope it has there. */
export function loftWeights(xs: ByStation<number>, x: number): ByStation<number> {
  const end = Math.min(xs.rear, Math.max(xs.front, x));
  if (end === x) return quadraticWeights(xs, x);
  // A quadratic's slope at the end is the slope of its chord about it.
  const [at, after, before] = [end, end + 1, end - 1].map((place) => quadraticWeights(xs, place));
  if (at === undefined || after === undefined || before === undefined) return quadraticWeights(xs, end);
  const on = (station: "front" | "mid" | "rear") =>
    at[station] + ((after[station] - before[station]) / 2) * (x - end);
  return { front: on("front"), mid: on("mid"), rear: on("rear") };
}

export function weighted(weights: ByStation<number>, values: ByStation<number>): number {
  return STATIONS.reduce((sum, station) => sum + weights[station] * values[station], 0);
}

/** One of each, by station. */
export function eachStation<T>(make: (station: Station) => T): ByStation<T> {
  return { front: make("front"), mid: make("mid"), rear: make("rear") };
}
