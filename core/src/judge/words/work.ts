import type { WorkAnswer } from "../../terms/answers.ts";
import { type Words, words } from "./words.ts";

/** When to look again at a saddle that is right today over a back that is not. */
export const NOTHING_OVER_A_HOLLOW =
  "Have horse and saddle looked at again in six to eight weeks, and ask a vet or physiotherapist about the hollow.";

export const WORK_WORDS: { readonly [A in WorkAnswer]: Words } = {
  "not-now": words(
    "Nothing is done to the saddle for this horse now.",
    "The horse comes first: what was found on it shuts all saddle work.",
    "Follow the horse's answer, then have the saddle looked at afresh.",
    "The vet, then the fitter.",
  ),
  "leave-as-found": words(
    "Leave the saddle as it was found.",
    "It belongs to a claim or dispute, or its owner has not agreed; nothing on it is touched.",
    "Keep it dry, unridden and unaltered until the claim is closed or the owner agrees in writing.",
    "Its owner, and whoever handles the claim.",
  ),
  nothing: words(
    "Nothing to do to this saddle for this horse today.",
    "Everything that was read lies inside and the hands agree, ridden check included.",
    "Look again in six months, or at once when the horse's shape, work or mood changes.",
    "The fitter.",
  ),
  "set-up": words(
    "Set it up otherwise first.",
    "Place, girth, pads, stirrups or the rider's seat are what is wrong; the head stays as it is.",
    "Put that right, ride, and read the saddle again.",
    "The fitter with the rider.",
  ),
  panel: words(
    "Work on the panel; leave the head.",
    "Flocking or a shim cures what was found, and a fill is dated and thinned at each visit.",
    "Have the panel done, ride, and look again in six to eight weeks.",
    "A fitter or saddler who flocks.",
  ),
  "change-plate": words(
    "Change the plate in the head.",
    "A plate at hand makes the whole fit; the old one stays with the saddle as the way back.",
    "Change it, both edges home and screws snug on both sides, measure it as fitted, and decide on the ridden check.",
    "A fitter or saddler who may, where the maker allows it.",
  ),
  "change-insert": words(
    "Change the inserts in the head.",
    "Another position would make the whole fit, the same on both sides.",
    "Set both sides alike and locked, measure it as fitted, and decide on the ridden check.",
    "A fitter or saddler who may, where the maker allows it.",
  ),
  "alter-dressed": words(
    "Alter the head at the press, inside the saddle.",
    "The whole fits afterwards, the change is small, and the tree may be taken as sound under its cover.",
    "Agree it with the owner for the worse case at once, alter in small measured passes, measure again after 24 hours, and ride.",
    "A qualified saddler with a press.",
  ),
  "alter-stripped": words(
    "Alter the head at the press, on the bare tree.",
    "The whole fits afterwards, and the tree was seen bare and sound, or has to be.",
    "Alter in small measured passes, look at it after each, measure again after 24 hours, build it up, and ride.",
    "A qualified saddler with a press.",
  ),
  "strip-first": words(
    "Strip it, look, then decide.",
    "What lies under the cover decides, and stripping can change the answer.",
    "Ask the owner for the worse case at once, strip it, and answer again with what is seen.",
    "A saddler who may strip.",
  ),
  "set-back": words(
    "Set back the earlier change of the head.",
    "The head fits best near as it was made.",
    "Set it back in small measured passes or by the old plate, measure it again after 24 hours, and ride.",
    "A qualified saddler.",
  ),
  "heat-by-maker": words(
    "The head is moved by heat, by the maker's people only.",
    "A head of this build takes heat and no pressure, and only in the maker's form.",
    "Send it to the maker's people with the readings and the template.",
    "The maker's own people.",
  ),
  colleague: words(
    "Refer it to a colleague who may do it.",
    "The work is prepared here and done by somebody qualified and equipped for it.",
    "Hand over the readings, the template and this sheet.",
    "A qualified colleague.",
  ),
  maker: words(
    "Refer it to the maker.",
    "The warranty, the build or the tree's past makes this the maker's to do or to allow.",
    "Ask the maker, with the readings and the template.",
    "The maker, or who the maker names.",
  ),
  "other-saddle": words(
    "This horse wants another saddle.",
    "No head that this saddle can have makes the whole fit; the saddle may suit another horse if it is sound.",
    "Keep the template and the traces to look for one with.",
    "The owner, with the fitter.",
  ),
  spent: words(
    "This tree has had its share of altering.",
    "The head that would fit lies beyond what this tree may still be moved.",
    "Leave the head, and look for another saddle or another tree.",
    "The owner, with the fitter; the maker for another tree.",
  ),
  "measure-more": words(
    "A reading is missing that decides.",
    "What is known leads to more than one answer.",
    "Take the reading named below and ask again.",
    "The fitter.",
  ),
};
