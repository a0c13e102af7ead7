import type { HorseAnswer, SaddleAnswer } from "../../terms/answers.ts";
import { horseWords, saddleWords } from "../answer-words.ts";

/** Where an owner's own answers are all there is, nothing may read as if somebody had looked. */
const HORSE: { readonly [A in HorseAnswer]?: readonly string[] } = {
  "no-reason-seen": [
    "No reason told.",
    "Nothing in your answers speaks against riding; nobody has touched the horse or seen it trot.",
  ],
  "come-back": ["Come back later.", "From your answers the back is not one to alter a saddle for now."],
};
const SADDLE: { readonly [A in SaddleAnswer]?: readonly string[] } = {
  "sound-dressed": [
    "Nothing told against it.",
    "Nobody has looked at it by trade; what lies under the cover was not seen.",
  ],
  "strip-before-altering": [
    "Nothing is done to its head before it has been looked at.",
    "Your answers cannot tell its past for sure; a fitter or saddler looks, and says whether the tree has to be seen bare.",
  ],
};

/** Sentences, one by one: a page in another language says each by itself. */
export const ownerHorseSays = (id: HorseAnswer): readonly string[] => {
  const { heading, meaning } = horseWords(id);
  return HORSE[id] ?? [heading, meaning];
};
export const ownerSaddleSays = (id: SaddleAnswer): readonly string[] => {
  const { heading, meaning } = saddleWords(id);
  return SADDLE[id] ?? [heading, meaning];
};
