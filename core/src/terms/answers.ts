/** The ids of the three answers. They live in code and files; letters and screens say them in words. */
export const HORSE_ANSWERS = [
  "not-examined",
  "no-reason-seen",
  "vet-before-altering",
  "vet-before-riding",
  "come-back",
] as const;
export type HorseAnswer = (typeof HORSE_ANSWERS)[number];

export const SADDLE_ANSWERS = [
  "not-looked",
  "sound-dressed",
  "sound-bare",
  "strip-before-altering",
  "strip-before-riding",
  "out-till-repaired",
  "out-for-good",
] as const;
export type SaddleAnswer = (typeof SADDLE_ANSWERS)[number];

export const WORK_ANSWERS = [
  "not-now",
  "leave-as-found",
  "nothing",
  "set-up",
  "panel",
  "change-plate",
  "change-insert",
  "alter-dressed",
  "alter-stripped",
  "strip-first",
  "set-back",
  "heat-by-maker",
  "colleague",
  "maker",
  "other-saddle",
  "spent",
  "measure-more",
] as const;
export type WorkAnswer = (typeof WORK_ANSWERS)[number];

/** Everything a person could be permitted to do to horse or saddle today. */
export const ACTS = ["ride", "set-up", "flock", "exchange", "strip", "press-dressed", "press-bare"] as const;
export type Act = (typeof ACTS)[number];

/** The four outcomes of judging a limit. */
export const OUTCOMES = ["inside", "between", "outside", "cannot-tell"] as const;
export type Outcome = (typeof OUTCOMES)[number];
