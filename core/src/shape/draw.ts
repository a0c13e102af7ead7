import { drawNormal, drawUniform } from "../engine/random.ts";
import type { Deviations, Uncertain } from "./model.ts";

/**
 * Deviations of all uncertain inputs in draw `index` of `seed`. A range is drawn with half of the draws on each side of
 * its base value, evenly on each side. The same draw comes out whatever else is drawn, and in whichever worker.
 */
export function drawDeviations(uncertain: readonly Uncertain[], seed: number, index: number): Deviations {
  const drawn: Record<string, number> = {};
  for (const one of uncertain) drawn[one.id] = deviation(one, seed, index);
  return drawn;
}

function deviation(one: Uncertain, seed: number, index: number): number {
  if (one.kind === "normal") return one.sd * drawNormal(seed, index, one.id);
  const u = drawUniform(seed, index, one.id);
  return u < 0.5 ? (one.mean - one.lo) * (2 * u - 1) : (one.hi - one.mean) * (2 * u - 1);
}
