import type { PressBelief } from "./belief.ts";
import { chancesOf, type Foretold, foretell } from "./foretell.ts";
import { learn } from "./learn.ts";
import { type MeasuredPass, travelOf } from "./measured-pass.ts";

/** A pass that was made: what the belief before it foretold of the travel that was used, and what was read. */
export interface ToldPass {
  readonly foretold: Foretold;
  readonly keptMm: number;
  readonly keptU: number;
  /** Beyond the foretold interval and the reading's own doubt together. */
  readonly came: "as-foretold" | "more" | "less";
  readonly unlike: boolean;
  /** Heads that still counted after it. */
  readonly count: number;
}

/** Ends of the central 90 % of a normal doubt, in standard uncertainties; the foretold ones are ends of 90 % as well. */
const ENDS = 1.645;
/** Fewer heads than this left of all believed: what was read is next to impossible, and an interval of so few is none. Assumption. */
const HEADS_LEAST = 12;

/** The belief before a pass, the pass, and the belief after it. datumU: standard uncertainty of the spread before the job. */
export function toldPass(
  belief: PressBelief,
  pass: MeasuredPass,
  datumU: number,
): { readonly told: ToldPass; readonly belief: PressBelief } {
  const foretold = foretell(belief, chancesOf(belief), travelOf(pass).value, pass.holdMin);
  const learned = learn(belief, pass);
  const { value, u } = pass.keptTips;
  const keptU = Math.sqrt(u * u + datumU * datumU);
  const { lo, mid, hi } = foretold.keptMm;
  // Foretold and read both have their doubt: the ends of their difference, by sum of squares.
  const end = (foretoldBy: number) => Math.sqrt(foretoldBy * foretoldBy + ENDS * ENDS * keptU * keptU);
  const came = value > mid + end(hi - mid) ? "more" : value < mid - end(mid - lo) ? "less" : "as-foretold";
  const unlike = learned.unlike || learned.count < HEADS_LEAST;
  return {
    told: { foretold, keptMm: value, keptU, came, unlike, count: learned.count },
    belief: learned.belief,
  };
}
