import type { HorseAnswer, SaddleAnswer, WorkAnswer } from "../../terms/answers.ts";

/** A caution as a record. `stop`: a stop sign; it outranks every other line on every sheet. */
export interface Caution {
  readonly id: string;
  readonly stop: boolean;
  readonly says: string;
}

const stop = (id: string, says: string): Caution => ({ id, stop: true, says });
const note = (id: string, says: string): Caution => ({ id, stop: false, says });

/** All cautions; common practice, no source. */
export const CAUTIONS = [
  stop("stop-horse", "STOP: do not ride this horse until a vet has seen it."),
  stop("stop-saddle", "STOP: do not ride in this saddle."),
  stop("stop-destroy", "STOP: this tree is broken. Mark it; do not mend or sell it."),
  stop("stop-evidence", "STOP: keep this saddle as it was found; do not ride in it or touch it."),
  note("horse-vet-asks", "Ask the vet whether the horse may be ridden meanwhile."),
  note(
    "horse-not-diagnosis",
    "A reaction to the hand is told as it was seen; what it means is for the vet to say.",
  ),
  note(
    "horse-not-looked",
    "Not everything was looked at on the horse; until it is, nothing here says that it may be ridden.",
  ),
  note(
    "saddle-not-looked",
    "Not everything was looked at on the saddle; until it is, nothing here says that it may be ridden in.",
  ),
  note("saddle-under-cover", "What lies under the cover was not seen."),
  note(
    "work-no-heat-on-wood",
    "A laminated tree is never heated; a plate is never bent to size; no head is moved on one side only.",
  ),
  note("work-ridden-check", "The ridden check decides, on both reins, before the work counts as done."),
  note(
    "work-rebalance",
    "A change of the head moves clearance, balance, channel and points: all are read again afterwards.",
  ),
  note("work-consent", "Nothing is begun before the legal owner has agreed, for the worse case at once."),
  note("work-fill-dated", "A fill is dated and thinned at each visit; one left in makes the hollow stay."),
  note("work-other-horses", "Every horse that wears this saddle is judged before its head is changed."),
  note("work-cold-only", "Only a cold trace, or one of unknown state, was judged; a warm back is wider."),
  note(
    "work-growing",
    "The horse is growing: prefer what can be undone, and look again in six to eight weeks.",
  ),
  note(
    "work-hollow",
    "There is a hollow of more than 10 mm behind the shoulder: a vet or physiotherapist is asked why, and horse and saddle are looked at again in six to eight weeks.",
  ),
  note(
    "work-horse-sides",
    "The horse's two sides differ much: before one side is filled, a vet or physiotherapist looks whether one is swollen or wasted, and whether the horse is lame.",
  ),
  note(
    "work-load-not-known",
    "Horse, rider or tack was not weighed, so nothing is said of the load; over 20 % of the horse's mass no saddle makes it right.",
  ),
  note(
    "work-shared-panel",
    "Another horse wears this saddle, or may: what is filled or placed for one is looked at under each.",
  ),
  note(
    "work-polymer-cold",
    "A polymer head is warmed through at 20 C, for hours, before anything is done to it; nothing is pressed or sprung cold.",
  ),
  note(
    "work-polymer-creep",
    "A polymer head takes back a part of its change by itself, 20 to 40 % within a week (from memory): it is measured after 24 hours and after a week before it counts as done.",
  ),
  note(
    "work-white-hairs",
    "White hairs or scars under the saddle tell of pressure before: look there after each ride.",
  ),
  note("work-trainee", "A trainee's work is countersigned at the bench, before and after."),
  note(
    "yard-disease",
    "Clean tools and hands between horses; no going from yard to yard while disease is about.",
  ),
] as const satisfies readonly Caution[];
export type CautionId = (typeof CAUTIONS)[number]["id"];

/** The sentence of a caution. */
export function cautionSays(id: CautionId): string {
  return CAUTIONS.find((one) => one.id === id)?.says ?? id;
}

export const HORSE_CAUTIONS: { readonly [A in HorseAnswer]: readonly CautionId[] } = {
  "not-examined": ["horse-not-looked"],
  "no-reason-seen": [],
  "vet-before-altering": ["horse-vet-asks", "horse-not-diagnosis"],
  "vet-before-riding": ["stop-horse", "horse-not-diagnosis"],
  "come-back": ["horse-not-diagnosis"],
};

export const SADDLE_CAUTIONS: { readonly [A in SaddleAnswer]: readonly CautionId[] } = {
  "not-looked": ["saddle-not-looked"],
  "sound-dressed": ["saddle-under-cover"],
  "sound-bare": [],
  "strip-before-altering": ["saddle-under-cover"],
  "strip-before-riding": ["stop-saddle"],
  "out-till-repaired": ["stop-saddle"],
  "out-for-good": ["stop-destroy", "stop-saddle"],
};

const BY_PRESS: readonly CautionId[] = [
  "work-consent",
  "work-no-heat-on-wood",
  "work-rebalance",
  "work-ridden-check",
  "work-other-horses",
];
const BY_EXCHANGE: readonly CautionId[] = [
  "work-consent",
  "work-no-heat-on-wood",
  "work-rebalance",
  "work-ridden-check",
];

export const WORK_CAUTIONS: { readonly [A in WorkAnswer]?: readonly CautionId[] } = {
  nothing: ["work-ridden-check"],
  "set-up": ["work-ridden-check"],
  panel: ["work-consent", "work-fill-dated", "work-ridden-check"],
  "change-plate": BY_EXCHANGE,
  "change-insert": BY_EXCHANGE,
  "alter-dressed": BY_PRESS,
  "alter-stripped": BY_PRESS,
  "set-back": BY_PRESS,
  "strip-first": ["work-consent"],
  "heat-by-maker": ["work-no-heat-on-wood"],
  colleague: ["work-rebalance"],
  maker: ["work-rebalance"],
};
