import type { SaddleAnswer } from "../../terms/answers.ts";
import { type Words, words } from "./words.ts";

export const SADDLE_WORDS: { readonly [A in SaddleAnswer]: Words } = {
  "not-looked": words(
    "Not looked over yet.",
    "Parts that can be seen and felt today were not looked at, so nothing is said about this saddle.",
    "Look over every part, squeeze, flex and twist it, and listen.",
    "The fitter.",
  ),
  "sound-dressed": words(
    "Nothing found, looked at dressed.",
    "What can be seen and felt with the cover on showed nothing; what lies under the cover was not seen.",
    "Look it over again at each visit and after any fall or knock.",
    "The fitter or a saddler.",
  ),
  "sound-bare": words(
    "Nothing found, looked at bare.",
    "The stripped tree showed nothing to eye, hand and light.",
    "Look at it again after each pass at the press, and when it is built up again.",
    "The saddler who stripped it.",
  ),
  "strip-before-altering": words(
    "Strip it before its head is altered.",
    "Something about the tree is in doubt, or its past is not known; under its cover it is not taken to the press.",
    "Have it stripped and looked at bare; ask the owner now, since what is found can change the answer.",
    "A saddler who may strip.",
  ),
  "strip-before-riding": words(
    "Strip it before it is ridden.",
    "There is doubt in a part that carries the rider, or the saddle was in an accident; it is not ridden until it has been seen bare.",
    "Put a tag on it, do not ride in it, and have it stripped.",
    "A saddler who may strip.",
  ),
  "out-till-repaired": words(
    "Out of use until it is repaired.",
    "A part has failed, or the head clicks or gives; it is not ridden until that is found and put right.",
    "Put a tag on it, have it repaired, and have it looked over again afterwards.",
    "A saddler; the maker while the warranty runs.",
  ),
  "out-for-good": words(
    "Out of use for good.",
    "The tree itself is cracked or parted; it is marked, not ridden, not mended and not sold.",
    "Mark it so that nobody can use it by mistake, and look for another saddle.",
    "Its owner, with the fitter's note.",
  ),
};
