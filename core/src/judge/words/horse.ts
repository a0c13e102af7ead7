import type { HorseAnswer } from "../../terms/answers.ts";
import { type Words, words } from "./words.ts";

/** What comes next for a horse that comes back for another reason than a place that reacted, by the reason. */
export const COME_BACK_NEXT: { readonly [rule: string]: string } = {
  "horse-off-work":
    "Bring it back into work, and have horse and saddle looked at again six to eight weeks after that.",
  "horse-changing":
    "Have horse and saddle looked at again in six to eight weeks; ask a vet or physiotherapist about a hollow.",
};

export const HORSE_WORDS: { readonly [A in HorseAnswer]: Words } = {
  "not-examined": words(
    "Not examined yet.",
    "The horse has not been touched, trotted up and asked about as far as an answer needs, so nothing is said about riding it.",
    "Go over the horse: hands on every zone and both sides, trotted up in hand, the questions asked one by one.",
    "The fitter, with the person who looks after the horse.",
  ),
  "no-reason-seen": words(
    "No reason seen not to ride.",
    "Hands, eyes and questions showed no reason today; that is not a vet's examination.",
    "Look again before each ride, and at the next visit.",
    "Whoever rides; a vet when anything changes.",
  ),
  "vet-before-altering": words(
    "See the vet before any saddle work.",
    "Something was found that a vet must look at first; until then nothing is fitted, filled or altered for this horse.",
    "Ring the vet, tell what was found and where, and ask whether the horse may be ridden meanwhile.",
    "A vet.",
  ),
  "vet-before-riding": words(
    "See the vet before riding.",
    "Something was found that may hurt horse or rider; the horse is not ridden until a vet has seen it.",
    "Ring the vet today and leave the saddle off.",
    "A vet.",
  ),
  "come-back": words(
    "Come back another day.",
    "The back is not one to alter a saddle for today.",
    "Ride lightly if at all, watch any place that reacted, and have the horse looked at again in six to eight weeks, or sooner if it gets worse.",
    "The fitter; a vet if it reacts again.",
  ),
};
