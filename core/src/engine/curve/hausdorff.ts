import { distance, type Point } from "./point.ts";

/** The farthest that any point of `from` lies from the nearest point of `to` (directed Hausdorff distance). */
export function farthestMiss(from: readonly Point[], to: readonly Point[]): number {
  let most = 0;
  for (const a of from) {
    let least = Number.POSITIVE_INFINITY;
    for (const b of to) least = Math.min(least, distance(a, b));
    most = Math.max(most, least);
  }
  return most;
}
