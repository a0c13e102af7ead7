import { HEAD_KINDS, type HeadKind } from "../../reach/build.ts";

/**
 * The reduced findings that the gates read, each with its printed order: a later word is worse, older,
 * less known or less qualified, and never opens more. Not looked at stands next to the worst: it may hide it.
 */
export const HORSE_ORDERS = {
  hands: ["all-zones", "not-all-zones"],
  pain: ["none", "mild-at-one-place", "clear-or-several", "strong"],
  lame: ["no", "not-known", "yes"],
  nerves: ["no", "not-known", "yes"],
  lesion: ["no", "not-known", "yes"],
  otherSign: ["no", "not-known", "yes"],
  workingShape: ["in-work", "not-known", "off-work"],
  /** Growing, or wasted behind the shoulder: a back that will not stay as it is. */
  shape: ["settled", "not-known", "changing"],
} as const;

export const RIGHT_ORDERS = {
  claim: ["no", "not-known", "yes"],
  consent: ["yes", "not-known", "no"],
  otherHorses: ["covered", "not-covered"],
} as const;

export const SOUNDNESS_ORDERS = {
  level: ["bare", "dressed", "not-looked"],
  riderPart: ["sound", "cannot-be-seen", "doubtful", "not-looked", "failed-renewable", "failed-structure"],
  otherPart: ["sound", "cannot-be-seen", "doubtful", "not-looked", "failed"],
  trauma: ["no", "not-known", "yes"],
  past: ["clean", "several-known", "not-known", "repaired-or-heated"],
  age: ["to-5-years", "not-known", "older"],
  square: ["square", "not-measured", "off"],
  serial: ["of-record", "not-known", "differs"],
} as const;

export const STANDING_ORDERS = {
  warranty: ["out", "taken-to-run"],
  makerPermits: ["yes", "not-known", "no"],
  mayAssess: ["may", "not-known", "may-not"],
  mayExchange: ["may", "not-known", "may-not"],
  mayPress: ["may", "not-known", "may-not"],
  mayStrip: ["may", "not-known", "may-not"],
} as const;

/** How the head is built has no order among the known kinds; only "not-known" comes after every one of them. */
export const BUILDS = HEAD_KINDS;
export const WAY_ORDERS = {
  told: ["looked-at", "owners-word", "not-told"],
  moved: ["on-record", "not-known"],
  warmth: ["warm", "not-known", "cold"],
  /** How a metal bar is held in its polymer; firm where there is none. */
  fixings: ["firm", "not-firm"],
  /** Inserts of a head that has them, and whether both sides stand in one position. */
  inserts: ["ready", "gritty", "not-known", "unlike"],
} as const;

type Of<O extends { readonly [k: string]: readonly string[] }> = { readonly [K in keyof O]: O[K][number] };
export type HorseFindings = Of<typeof HORSE_ORDERS>;
export type RightFindings = Of<typeof RIGHT_ORDERS>;
export type SoundnessFindings = Of<typeof SOUNDNESS_ORDERS>;
export type StandingFindings = Of<typeof STANDING_ORDERS>;
export type Build = HeadKind;
export type WayFindings = Of<typeof WAY_ORDERS> & { readonly build: Build };

export interface Findings {
  readonly horse: HorseFindings;
  readonly right: RightFindings;
  readonly soundness: SoundnessFindings;
  readonly standing: StandingFindings;
  readonly way: WayFindings;
}

/** The later of two words in a printed order. */
export function worse<W extends string>(order: readonly W[], ...words: readonly W[]): W {
  const places = words.map((word) => order.indexOf(word));
  const found = order[Math.max(...places)];
  if (found === undefined || places.includes(-1))
    throw new Error(`no word of the order ${order.join(", ")}: ${words.join(", ")}`);
  return found;
}
