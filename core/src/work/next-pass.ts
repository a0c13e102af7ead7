import { STRAIN_STOPS } from "../reach/bend/stops.ts";
import type { PressBelief } from "./belief.ts";
import { HOLD_MIN } from "./doubts.ts";
import { chancesOf, type Foretold, foretell, keptNow } from "./foretell.ts";

/** What bounds a pass. */
export type Bound = "wanted" | "stretch" | "nothing-left";
export interface NextPass {
  readonly foretold: Foretold;
  readonly boundBy: Bound;
}

/** Travel is told in steps that a hand can set, mm; a pass that adds less than this in the middle is not worth a risk. Common practice, no source. */
const TRAVEL_STEP_MM = 0.5;
const WORTH_MM = 0.5;
const TRAVEL_MOST_MM = 40;

/**
 * The next pass. The first is as long as keeps no more than is wanted in any head believed: sized by the least
 * spring-back, not by the mean. A later one, as long as keeps the upper end of its 90 % within what is wanted.
 * Neither stretches the wood beyond its stop in the middle head. wantedMm: since before the job, above 0, caps already taken off.
 */
export function nextPass(
  belief: PressBelief,
  wantedMm: number,
  {
    holdMin = HOLD_MIN,
    stretchStop = STRAIN_STOPS.wood.limit,
  }: { holdMin?: number; stretchStop?: number } = {},
): NextPass {
  const chances = chancesOf(belief);
  const at = (steps: number) => foretell(belief, chances, steps * TRAVEL_STEP_MM, holdMin);
  const first = belief.passes === 0;
  const keeps = (one: Foretold) => (first ? one.mostKeptMm : one.keptMm.hi) <= wantedMm;
  const holds = (one: Foretold) => one.stretch.mid <= stretchStop;
  let [lo, hi] = [0, TRAVEL_MOST_MM / TRAVEL_STEP_MM];
  while (hi - lo > 1) {
    const middle = Math.floor((lo + hi) / 2);
    const one = at(middle);
    if (keeps(one) && holds(one)) lo = middle;
    else hi = middle;
  }
  const foretold = at(lo);
  const adds = foretold.keptMm.mid - keptNow(belief).mid;
  if (lo === 0 || (adds < WORTH_MM && !first)) return { foretold, boundBy: "nothing-left" };
  return { foretold, boundBy: keeps(at(lo + 1)) ? "stretch" : "wanted" };
}
