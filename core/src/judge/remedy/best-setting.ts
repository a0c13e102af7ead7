import type { Candidate } from "../input.ts";
import { limitRule } from "../limits/all.ts";
import { type Fault, faultsOf, isWhole } from "./faults.ts";
import type { Assume, Judged } from "./judged.ts";

/** Misfits of which the worst decides between settings. */
const MISFITS: readonly string[] = ["face-front", "face-rail", "spread-wanted"];
const TIE = 1e-9;

/** A candidate with its whole judged. */
export interface Tried {
  readonly candidate: Candidate;
  readonly limits: readonly Judged[];
  /** Other horses of this saddle that this would put outside. */
  readonly harms: readonly number[];
  /** Other horses of this saddle of which that cannot be told: each with what is missing. */
  readonly untold: readonly { readonly horseIndex: number; readonly missing: readonly string[] }[];
}

/** At the press or by heat: nobody takes that back in ten minutes, and every horse of the saddle gets it. */
export const isBent = ({ candidate: { setting } }: Tried): boolean =>
  setting.way === "press" || setting.way === "heat";

/** Worst ratio of misfit to its inside limit over stations and sides; the smaller side's slack is filled and left out. */
export function worstRatio(limits: readonly Judged[]): number {
  const ratios = limits.flatMap(({ rule, value, slack }) => {
    if (!MISFITS.includes(rule) || value === undefined || slack) return [];
    const [lo, hi] = limitRule(rule).inside;
    return [value >= 0 ? value / hi : value / lo];
  });
  return ratios.length === 0 ? Number.POSITIVE_INFINITY : Math.max(...ratios);
}

/** What no set-up and no panel away from head and rails can put right afterwards. */
export function blocking(faults: readonly Fault[]): readonly Fault[] {
  return faults.filter((fault) => fault.cure === undefined || fault.ofFrame);
}

/** All after-limits inside that the head answers for. */
export const fitsWhole = (tried: Tried, assume: Assume): boolean =>
  blocking(faultsOf(tried.limits, assume)).length === 0;
/** Nothing outside and at most one between. */
export const fitsNearly = (tried: Tried, assume: Assume): boolean =>
  isWhole(blocking(faultsOf(tried.limits, assume)));

/**
 * The setting with the smallest worst ratio among those that fit; ties go to the smaller change.
 * An exchange may leave one limit between, which the panel then serves; press and heat may not.
 */
export function best(all: readonly Tried[], assume: Assume): Tried | undefined {
  const whole = all.filter((tried) => fitsWhole(tried, assume));
  const nearly = all.filter((tried) => !isBent(tried) && fitsNearly(tried, assume));
  const [first, ...rest] = whole.length > 0 ? whole : nearly;
  if (first === undefined) return undefined;
  return rest.reduce((least, tried) => (isBetter(tried, least) ? tried : least), first);
}

function isBetter(a: Tried, b: Tried): boolean {
  const apart = worstRatio(a.limits) - worstRatio(b.limits);
  if (Math.abs(apart) > TIE) return apart < 0;
  return Math.abs(a.candidate.setting.changeMm) < Math.abs(b.candidate.setting.changeMm);
}
