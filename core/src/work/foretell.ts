import { quantile } from "../engine/quantile.ts";
import { drawNormal } from "../engine/random.ts";
import type { PressBelief } from "./belief.ts";
import { TRAVEL_SET_MM } from "./doubts.ts";
import { pressed } from "./pressed.ts";

/**
 * Ends of the central 90 % are moved out from the middle by this factor: 1200 heads are few, and without it the ends held
 * 85.9 % of 854 later passes of 500 simulated heads. Derived from that run; evidence/work checks it on other draws.
 */
const WIDER = 1.1;

/** Middle and ends of the central 90 %. */
export interface Interval {
  readonly lo: number;
  readonly mid: number;
  readonly hi: number;
}

/** What a pass is foretold to leave, since before the job, mm; and what it takes. */
export interface Foretold {
  readonly travelMm: number;
  readonly keptMm: Interval;
  readonly nearMm: Interval;
  readonly offMm: Interval;
  /** The head among all believed that keeps most. */
  readonly mostKeptMm: number;
  readonly forceN: Interval;
  /** Greatest stretch of the wood in the press. */
  readonly stretch: Interval;
}

/** What chance does to each head in its next pass, in standard uncertainties: drawn once, so that two travels differ by the travel alone. */
export interface Chances {
  readonly travel: Float64Array;
  readonly near: Float64Array;
  readonly off: Float64Array;
}

export function chancesOf({ particles, passes, seed }: PressBelief): Chances {
  const drawn = (name: string) =>
    Float64Array.from(particles, (_, i) => drawNormal(seed, i * 64 + passes, `${name} foretold`));
  return { travel: drawn("travel"), near: drawn("near"), off: drawn("off") };
}

/** The next pass of a travel of both tips together, held for some minutes, over all heads believed. */
export function foretell(
  { particles, passes }: PressBelief,
  chances: Chances,
  travelMm: number,
  holdMin: number,
): Foretold {
  const n = particles.length;
  const [near, off, both, force, stretch] = Array.from({ length: 5 }, () => new Float64Array(n));
  if (!near || !off || !both || !force || !stretch) throw new RangeError("nothing is believed");
  particles.forEach((head, i) => {
    const chance = (name: keyof Chances) => chances[name][i] ?? 0;
    const setMm = travelMm + TRAVEL_SET_MM * chance("travel");
    const press = pressed(head, { travelMm: setMm, holdMin, before: passes });
    const kept = [
      press.keptMm[0] + press.keptU[0] * chance("near"),
      press.keptMm[1] + press.keptU[1] * chance("off"),
    ] as const;
    near[i] = kept[0];
    off[i] = kept[1];
    both[i] = kept[0] + kept[1];
    force[i] = press.forceN * head.gauge;
    stretch[i] = press.stretch;
  });
  return {
    travelMm,
    keptMm: interval(both),
    nearMm: interval(near),
    offMm: interval(off),
    mostKeptMm: both.reduce((most, one) => Math.max(most, one), 0),
    forceN: interval(force, 1),
    stretch: interval(stretch, 1),
  };
}

/** What is kept now, since before the job. */
export function keptNow({ particles }: PressBelief): Interval {
  return interval(Float64Array.from(particles, ({ keptMm }) => keptMm[0] + keptMm[1]));
}

/** The same of each half. */
export function keptBySide({ particles }: PressBelief): { readonly near: Interval; readonly off: Interval } {
  const of = (k: 0 | 1) => interval(Float64Array.from(particles, ({ keptMm }) => keptMm[k]));
  return { near: of(0), off: of(1) };
}

function interval(values: Float64Array, wider = WIDER): Interval {
  values.sort();
  const mid = quantile(values, 0.5);
  const end = (part: number) => mid + wider * (quantile(values, part) - mid);
  return { lo: end(0.05), mid, hi: end(0.95) };
}
