import { U_PER_SD } from "../engine/central.ts";
import { ASSUMED } from "../fit/assumed.ts";
import { assumed } from "../fit/load.ts";
import { type ChangedSince, changedSince, isVoid } from "../shape/trace-void.ts";
import { type HorseMass, massOfHorse } from "../shape/weight.ts";
import type { Survey, Trace } from "../survey/case.ts";
import { isRead } from "../survey/reading.ts";
import { reasons } from "./because.ts";
import type { Because } from "./judgement.ts";
import { LOAD_MOST } from "./remedy/rider.ts";

/** Under this part of the horse's mass nothing is said of the load (a choice, not a finding; see the rules). */
export const LOAD_QUIET = 0.15;
export const LOAD_BANDS = ["load-under-15", "load-15-to-20", "load-over-20"] as const;
export type LoadBand = (typeof LOAD_BANDS)[number];

/** Rider and tack as part of the horse's mass. */
export interface LoadAdvice {
  readonly part: number;
  /** Half of the central 95 %, of both masses together. */
  readonly u: number;
  readonly band: LoadBand;
  /** Bands that the part may also lie in, within its doubt. */
  readonly maybe: readonly LoadBand[];
  readonly tackWeighed: boolean;
}

/** A trace that no longer tells of this back, by its place in the case. */
export interface VoidTrace extends ChangedSince {
  readonly index: number;
  readonly trace: Trace;
}

/** What body, condition and load say beside the three answers. */
export interface BodyAdvice {
  readonly mass: HorseMass | undefined;
  readonly load: LoadAdvice | undefined;
  /** 1 to 9. */
  readonly condition: number | undefined;
  readonly voidTraces: readonly VoidTrace[];
  readonly because: readonly Because[];
}

/** The usual ideal (read beside Henneke et al. 1983). */
const CONDITION_IDEAL = [4, 6] as const;

export function bodyAdvice({ rider, horses }: Survey, horseIndex: number): BodyAdvice | undefined {
  const horse = horses[horseIndex];
  if (horse === undefined) return undefined;
  const mass = massOfHorse(horse);
  const load = mass && loadAdvice(rider, mass);
  const grade = horse.body.condition;
  const condition = isRead(grade) ? grade.value : undefined;
  const voidTraces = horse.traces.flatMap((trace, index) =>
    isVoid(horse, trace) ? [{ index, trace, ...changedSince(horse, trace) }] : [],
  );
  const outside =
    condition !== undefined && (condition < CONDITION_IDEAL[0] || condition > CONDITION_IDEAL[1]);
  const rules = [
    ...(load ? [load.band] : []),
    ...(outside ? ["condition-outside"] : []),
    ...(voidTraces.length > 0 ? ["trace-void"] : []),
  ];
  return { mass, load, condition, voidTraces, because: reasons(rules, horseIndex) };
}

/** Undefined where the rider was not weighed; tack that was not weighed is taken as assumed. */
function loadAdvice({ massDressed, tackMass }: Survey["rider"], { best }: HorseMass): LoadAdvice | undefined {
  if (!isRead(massDressed)) return undefined;
  const { lo, hi } = ASSUMED.tackMassKg;
  const tackWeighed = isRead(tackMass);
  const tack = tackWeighed
    ? { kg: tackMass.value, sd: squares(tackMass.own, tackMass.shared) }
    : { kg: assumed("tackMassKg", {}), sd: (hi - lo) / (2 * Math.sqrt(3)) };
  const kg = massDressed.value + tack.kg;
  const sd = squares(massDressed.own, massDressed.shared, tack.sd);
  const part = kg / best.kg;
  const u = U_PER_SD * part * squares(sd / kg, best.sdKg / best.kg);
  const band = bandAt(part);
  const maybe = [...new Set([bandAt(part - u), bandAt(part + u)])].filter((one) => one !== band);
  return { part, u, band, maybe, tackWeighed };
}

const bandAt = (part: number): LoadBand =>
  part < LOAD_QUIET ? "load-under-15" : part <= LOAD_MOST ? "load-15-to-20" : "load-over-20";

const squares = (...all: readonly number[]): number =>
  Math.sqrt(all.reduce((sum, one) => sum + one * one, 0));
