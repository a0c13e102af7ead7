import type { Act } from "../../terms/answers.ts";
import type { Findings } from "../findings/orders.ts";
import type { Shut } from "../gates/gate.ts";
import type { Gated } from "../gates.ts";

/** What the build says of a change that is not made here. */
export const wayRules = (gated: Gated): readonly string[] =>
  gated.passed.way.shut.filter((one) => one.act === "press-bare").map((one) => one.rule);

/** Of the tree's findings those that shut a change whoever makes it; the others only shut the press of a wooden tree here. */
const FOR_ANYBODY: readonly string[] = [
  "saddle-repaired",
  "saddle-incident-bare",
  "saddle-twisted",
  "saddle-other-part-doubtful",
];

/** What bars a change that other hands would make: the horse, the right to it, and what no hands put right. */
export function barOnOthers(gated: Gated, { way }: Findings): Shut | undefined {
  const act: Act =
    way.build === "plate-exchanged" || way.build === "insert-exchanged" ? "exchange" : "press-bare";
  const { horse, right, soundness } = gated.passed;
  const bars = [
    ...horse.shut,
    ...right.shut,
    ...soundness.shut.filter(({ rule }) => FOR_ANYBODY.includes(rule)),
  ];
  return bars.find((bar) => bar.act === act);
}
