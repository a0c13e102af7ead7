import { glanceFor, openingMm } from "../../engine/bending/index.ts";
import { quantile } from "../../engine/quantile.ts";
import type { Bend } from "./bend-of.ts";
import { drawnHead } from "./drawn-head.ts";
import { throughPast } from "./past.ts";

/** Draws behind the interval of a travel. */
const DRAWS = 32;

/** Where a travel lies over all that is not known of the head: central nine tenths, mm the way of the change. */
export interface TravelRange {
  readonly loMm: number;
  readonly hiMm: number;
  /** The least there is among the draws: a first pass goes no further. */
  readonly leastMm: number;
  /** Draws in which the head gives way before it keeps the change. */
  readonly givesWay: number;
  readonly draws: number;
}

/** Travel for a kept change over the ranges and readings' doubts; undefined where hardly a draw keeps it. */
export function travelRange(bend: Bend, changeMm: number, seed: number): TravelRange | undefined {
  const travels: number[] = [];
  for (let index = 0; index < DRAWS; index++) {
    const { arch } = bend.belief.at(drawnHead(bend.belief, seed, index), "alike");
    const { state } = throughPast(arch, bend.pastMm);
    const stands = openingMm(arch, state);
    const glance = glanceFor(arch, state, stands + changeMm);
    if (glance) travels.push(Math.abs(glance.heldMm - stands));
  }
  if (travels.length < DRAWS / 2) return undefined;
  const sorted = travels.sort((a, b) => a - b);
  return {
    loMm: quantile(sorted, 0.05),
    hiMm: quantile(sorted, 0.95),
    leastMm: sorted[0] ?? 0,
    givesWay: DRAWS - travels.length,
    draws: DRAWS,
  };
}
