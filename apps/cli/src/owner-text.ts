import { horseWords, saddleWords } from "@treewright/core/judge/answer-words.ts";
import type { OwnerAnswer } from "@treewright/core/judge/owner.ts";
import { beside, wrap } from "./columns.ts";

/** What the owner is told: stop signs first, never a promise, never a figure for press or heat. */
export function ownerText(answer: OwnerAnswer): string[] {
  const horse = horseWords(answer.horse);
  const saddle = saddleWords(answer.saddle);
  return [
    ...answer.stops.flatMap((text) => [...wrap(text), ""]),
    ...beside("Horse", `${horse.heading} ${horse.meaning}`, 8),
    ...beside("Saddle", `${saddle.heading} ${saddle.meaning}`, 8),
    "",
    ...(answer.atHome.length > 0 ? ["What you may do at home"] : []),
    ...answer.atHome.flatMap((text) => wrap(`- ${text}`, 2, 2)),
    ...(answer.atHome.length > 0 ? [""] : []),
    "Whom to see, in this order",
    ...answer.see.flatMap(({ who, why }) => beside(who, why, 10)),
    "",
    "Why",
    ...answer.because.flatMap(({ says, rule, sourceRef }) => [
      ...wrap(`- ${says}`, 2, 2),
      ...wrap(`${rule}; ${sourceRef}`, 4),
    ]),
    "",
    ...wrap(
      "This comes from what you said, not from looking: it promises nothing. Stop, and ring the vet, at any pain, " +
        "heat, swelling, sore or lameness. Nobody presses, heats or bends a head at home.",
    ),
  ];
}
