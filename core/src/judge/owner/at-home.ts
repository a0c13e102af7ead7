import type { Gated } from "../gates.ts";
import type { OwnerQuestion } from "./question.ts";

const LOOK = "Look the saddle over in good light: straps, webs, bars, stitching, and the head for cracks.";
const PLACE = [
  "Lay it on the bare back without a pad, girth it, and see where it comes to lie by itself.",
  "Take pads and risers off first, and see whether the stirrups hang on the same hole on both sides.",
  "Write down what you see with the date, and ring a fitter.",
];

/**
 * What may be done at home where no stop sign stands: to look; and, when horse and saddle leave it open, to place it and
 * write down what is seen. Changing a head is looked at by others first.
 */
export function atHome(question: OwnerQuestion, gated: Gated): readonly string[] {
  const horse = gated.horse === "no-reason-seen" || gated.horse === "come-back";
  if (!horse || !gated.permitted.includes("set-up")) return [LOOK];
  const changeable = question.exchange === "plate" || question.exchange === "insert";
  return [
    LOOK,
    ...PLACE,
    ...(changeable && gated.permitted.includes("exchange") ? [WHAT_A_CHANGE_NEEDS] : []),
  ];
}

const WHAT_A_CHANGE_NEEDS =
  "What a change of plate or inserts needs: a fitter first looks at horse and saddle and names what to fit; parts of this maker and this mounting; both sides alike and home, photographed; a ridden look afterwards by the fitter.";
