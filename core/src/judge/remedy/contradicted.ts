import { limitRule } from "../limits/all.ts";
import { bandOf } from "../limits/bands.ts";
import type { Choice } from "./choice.ts";
import { handsAgree, measure } from "./evidence.ts";
import type { Known } from "./known.ts";

/**
 * Hands that say tight where the template says wide, or the other way round: one of the two was misread, and no saddle is
 * given up on that. Nor on a template that is off on one side alone.
 */
export function contradicted(known: Known): Choice | undefined {
  const { horse, path, template } = known;
  const value = template?.value ?? 0;
  if (isOff(value) && handsAgree(horse, value))
    return measure("fit-hands-against-template", [
      `${path}.template.nearTip`,
      `${path}.template.offTip`,
      `${path}.girthed.handNear`,
      `${path}.girthed.handOff`,
    ]);
  return heldAskew(known) ? measure("fit-template-one-sided", [`${path}.template`]) : undefined;
}

const isOff = (spreadMm: number): boolean => bandOf(limitRule("spread-wanted"), spreadMm) !== "inside";

/** Off on one side alone, in a head whose halves stand alike, over a horse whose sides are alike, and the hand there is even. */
function heldAskew({ today, horse }: Known): boolean {
  const ofTemplate = today.filter(
    ({ rule, at }) => rule === "feeler" || (rule === "face-front" && at.endsWith("template")),
  );
  const outside = new Set(ofTemplate.filter(({ outcome }) => outcome === "outside").map(({ side }) => side));
  const [side] = outside;
  if (outside.size !== 1 || ofTemplate.some((one) => one.side !== side && one.outcome !== "inside"))
    return false;
  const hand = side === "near" ? horse.girthed.handNear : horse.girthed.handOff;
  const even = today.filter(({ rule }) => EVEN.includes(rule)).every(({ outcome }) => outcome === "inside");
  return even && hand === "even";
}
const EVEN: readonly string[] = ["saddle-half-angles", "horse-sides-angle", "horse-sides-width"];
