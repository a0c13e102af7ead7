import { horseWords, mayRideSays, saddleWords, type Words } from "../judge/answer-words.ts";
import type { Answers } from "../judge/judgement.ts";
import type { Act, HorseAnswer, SaddleAnswer, WorkAnswer } from "../terms/answers.ts";

/*
 * The answers in words for somebody who owns a horse and knows nothing of saddle making. Where a sentence of the trade could be read as
 * leave to ride, the owner gets another one. Common practice, no source.
 */

/** `HORSE` stands for the horse's name. */
const HORSE: { readonly [A in HorseAnswer]?: string } = {
  "no-reason-seen":
    "No reason seen in HORSE itself not to ride. Hands, eyes and questions showed no reason today; that is not a vet's examination.",
};
const SADDLE: { readonly [A in SaddleAnswer]?: string } = {
  "sound-dressed":
    "Nothing found broken, looked at with its cover on. What lies under the cover was not seen.",
  "sound-bare": "Nothing found broken, its tree looked at bare, without its cover.",
  "strip-before-altering":
    "A saddler has to take it apart and look at its tree before its head is altered. Something about the tree is in doubt, or its past is not known.",
  "strip-before-riding":
    "Not to be ridden in. There is doubt in a part that carries the rider, or the saddle was in an accident. A saddler takes it apart; it is ridden in again only when its tree has been seen bare, found sound, and the saddle has been built up and looked over.",
};

/** "Nothing found" is read as "it fits": what is said of the fit stands with it. */
const SOUND: readonly SaddleAnswer[] = ["sound-dressed", "sound-bare"];
const NOT_JUDGED: readonly WorkAnswer[] = ["not-now", "leave-as-found", "measure-more"];

/** What the saddle is for its owner, with the answer's own words where they cannot be misread. */
export function saddleForOwner({ saddle: { id }, work }: Answers): readonly string[] {
  const says = ownOr(SADDLE[id], saddleWords(id));
  if (!SOUND.includes(id)) return says;
  return [
    ...says,
    NOT_JUDGED.includes(work.id) ? "How it fits was not judged." : "How it fits is told below, at the work.",
  ];
}

export const horseForOwner = (id: HorseAnswer): readonly string[] => ownOr(HORSE[id], horseWords(id));

const ownOr = (own: string | undefined, { heading, meaning }: Words): readonly string[] =>
  own === undefined ? [heading, meaning] : [own];

/** What somebody does who waits for work on a saddle that does not yet fit. */
const CAREFULLY =
  "It does not yet fit as it should. Until it does, ride at walk and trot only, and not for long. After each ride look at the back for heat, swelling, rubbed or ruffled hair, dry spots under a wet saddle, and flinching: at any of these stop riding in this saddle and ring us, or the vet.";

/** Answers that leave the fit as it is, or say nothing of it. */
const NO_FAULT_OF_FIT: readonly WorkAnswer[] = ["not-now", "leave-as-found", "nothing", "measure-more"];

/** May it be ridden? A horse that a vet is to see is not, until the vet has said so: "ask first" is read as leave. */
export function rideForOwner({ horse, saddle, work }: Answers, permitted: readonly Act[]): readonly string[] {
  const may = mayRideSays(horse.id, saddle.id, permitted);
  if (horse.id === "vet-before-altering" && !may.startsWith("No")) return [VET_SAYS];
  return permitted.includes("ride") && !NO_FAULT_OF_FIT.includes(work.id) ? [may, CAREFULLY] : [may];
}

const VET_SAYS = "Not before a vet has said that HORSE may be ridden.";

/** What a flagged horse's owner does first. */
const FIRST: { readonly [A in HorseAnswer]?: string } = {
  "vet-before-altering":
    "You ring the vet, tell what was found and where, and ask whether HORSE may be ridden. Until the vet has answered it is not ridden.",
  "vet-before-riding": "You ring the vet today, and leave the saddle off.",
};
export const firstForOwner = (id: HorseAnswer): string | undefined => FIRST[id];

/** When to come sooner; nothing where something else has to be done first. */
export function soonerForOwner({ horse, saddle }: Answers): string {
  if (horse.id.startsWith("vet-")) return "The vet at once where HORSE gets worse.";
  const waits = ["strip-before-riding", "out-till-repaired", "out-for-good"].includes(saddle.id);
  return waits ? "" : "Sooner where HORSE's shape, work or mood changes.";
}

/** Words of the trade that a letter cannot do without. */
export const WORDS_FOR_OWNER =
  "In this letter the tree is the frame inside the saddle, its head the arch over the withers, and the tips the ends of that arch; the panel is the cushion on the horse, and to flock is to fill it with wool.";
