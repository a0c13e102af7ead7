import type { Act, HorseAnswer, SaddleAnswer, WorkAnswer } from "../terms/answers.ts";
import { HORSE_WORDS } from "./words/horse.ts";
import { SADDLE_WORDS } from "./words/saddle.ts";
import type { Words } from "./words/words.ts";
import { WORK_WORDS } from "./words/work.ts";

export type { Words };

/** An answer's id in plain words: heading, meaning, next step, who may do it. Ids themselves are never shown to people. */
export const horseWords = (id: HorseAnswer): Words => HORSE_WORDS[id];
export const saddleWords = (id: SaddleAnswer): Words => SADDLE_WORDS[id];
export const workWords = (id: WorkAnswer): Words => WORK_WORDS[id];

/**
 * May it be ridden today: one sentence, from the two answers and the acts that the gates leave open; a saddle that is
 * kept as evidence is sound and still not ridden in.
 */
export function mayRideSays(horse: HorseAnswer, saddle: SaddleAnswer, permitted?: readonly Act[]): string {
  if (horse === "vet-before-riding") return "No: not this horse, until a vet has seen it.";
  if (["strip-before-riding", "out-till-repaired", "out-for-good"].includes(saddle))
    return "No: not in this saddle.";
  if (horse === "not-examined" || saddle === "not-looked")
    return "Not answered: not everything has been looked at.";
  if (permitted && !permitted.includes("ride"))
    return "No: not in this saddle, which is kept as it was found.";
  return horse === "vet-before-altering"
    ? "Ask the vet first; no saddle work is done before."
    : "No reason was seen today not to ride in this saddle, as far as it was looked at.";
}
