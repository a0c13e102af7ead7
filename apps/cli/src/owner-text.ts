import type { OwnerAnswer } from "@treewright/core/judge/owner.ts";
import { beside, wrap } from "./columns.ts";

/** What the owner is told: stop signs first, never a promise, never a figure for press or heat. */
export function ownerText(answer: OwnerAnswer): string[] {
  return [
    ...answer.stops.flatMap((text) => [...wrap(text), ""]),
    ...beside("Horse", answer.says.horse.join(" "), 8),
    ...beside("Saddle", answer.says.saddle.join(" "), 8),
    "",
    ...(answer.atHome.length > 0 ? ["What you may do at home"] : []),
    ...answer.atHome.flatMap((text) => wrap(`- ${text}`, 2, 2)),
    ...(answer.atHome.length > 0 ? [""] : []),
    "Whom to see, in this order",
    ...answer.see.flatMap(({ who, why }) => beside(who, why, 10)),
    "",
    "Why",
    ...answer.because.flatMap(({ says, sourceRef }) => [...wrap(`- ${says}`, 2, 2), ...wrap(sourceRef, 4)]),
    "",
    ...wrap(
      "This comes from what you said, not from looking: it promises nothing. Stop, and ring the vet, at any pain, " +
        "heat, swelling, sore or lameness. Nobody presses, heats or bends a head at home.",
    ),
  ];
}
