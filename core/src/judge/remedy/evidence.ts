import type { SurveyedHorse } from "../../survey/case.ts";
import { isRead } from "../../survey/reading.ts";
import type { MeasuredLimit } from "../input.ts";
import type { Choice } from "./choice.ts";

type Hand = SurveyedHorse["girthed"]["handNear"];

const hands = (horse: SurveyedHorse): readonly Hand[] => [horse.girthed.handNear, horse.girthed.handOff];
const handPaths = (horse: SurveyedHorse, path: string): string[] => [
  ...(horse.girthed.handNear === "not-looked" ? [`${path}.girthed.handNear`] : []),
  ...(horse.girthed.handOff === "not-looked" ? [`${path}.girthed.handOff`] : []),
];

/** Tight at the tip is cured by opening; tight at the top, or loose, by closing. One side at least shows it, and none the contrary. */
export function handsAgree(horse: SurveyedHorse, changeMm: number): boolean {
  const tight = hands(horse).includes("tight-at-tip");
  const slack = hands(horse).some((hand) => hand === "tight-at-top" || hand === "loose");
  return changeMm > 0 ? tight && !slack : slack && !tight;
}

/** Both hands even: what "nothing" needs besides the limits. */
export const handsEven = (horse: SurveyedHorse): boolean => hands(horse).every((hand) => hand === "even");

/** A reading is missing, or to be taken again, under this rule. */
export const measure = (rule: string, missing: readonly string[]): Choice => ({
  wish: "measure-more",
  rules: [rule],
  also: [],
  missing,
});

/**
 * What a press still lacks: a template offered up with feelers at both tips that shows the same fault, and hands that do.
 * Undefined when nothing is lacking. Two angles subtracted are never enough.
 */
export function lacksForPress(
  horse: SurveyedHorse,
  path: string,
  template: MeasuredLimit | undefined,
  changeMm: number,
): Choice | undefined {
  const tips = [`${path}.template.nearTip`, `${path}.template.offTip`];
  if (template?.value === undefined) return measure("fit-press-needs-template", template?.missing ?? tips);
  if (template.value * changeMm >= 0) return measure("fit-press-needs-template", tips);
  const untouched = handPaths(horse, path);
  if (untouched.length > 0) return measure("fit-press-needs-hands", untouched);
  return handsAgree(horse, changeMm)
    ? undefined
    : measure("fit-press-needs-hands", [`${path}.girthed.handNear`, `${path}.girthed.handOff`]);
}

/** What an exchange lacks: hands that show the contrary of what it would do want the template before any plate is changed. */
export function lacksForExchange(horse: SurveyedHorse, path: string, changeMm: number): Choice | undefined {
  if (!handsAgree(horse, -changeMm)) return undefined;
  return measure("fit-exchange-against-hands", [`${path}.template.nearTip`, `${path}.template.offTip`]);
}

/**
 * What "nothing" still lacks: both hands, even, and the saddle seen ridden. Hands that show a fault where the limits show
 * none want the template.
 */
export function lacksForNothing(horse: SurveyedHorse, path: string): Choice | undefined {
  if (handsEven(horse)) {
    if (isRead(horse.moved.sideOffset)) return undefined;
    return measure("fit-not-ridden", [`${path}.moved.sideOffset`]);
  }
  const untouched = handPaths(horse, path);
  if (untouched.length > 0) return measure("fit-cannot-tell", untouched);
  return measure("fit-cannot-tell", [`${path}.template.nearTip`, `${path}.template.offTip`]);
}
