import { BEARING_HEIGHTS } from "./at-rest.ts";
import type { Choice, FitWish } from "./choice.ts";
import type { Known } from "./known.ts";
import { riderNotAsked } from "./rider.ts";

/** Answers that stand whatever rider and panel are like. */
const STANDS: readonly FitWish[] = ["set-up", "not-now", "spent", "other-saddle", "measure-more"];

/** A panel that nobody looked at may be what is wrong; its squareness is always in reach of eye and hand. */
function panelNotLooked({ survey }: Known): readonly string[] {
  const { state, square } = survey.saddle.panel;
  return [
    ...(state === "not-looked" ? ["saddle.panel.state"] : []),
    ...(square === "not-looked" || square === "cannot-be-seen" ? ["saddle.panel.square"] : []),
  ];
}

/** What comes before a head or a "nothing" has to be known: the rider, the panel; else it is asked for first. */
export function askedFirst(known: Known, choice: Choice): Choice {
  if (STANDS.includes(choice.wish)) return choice;
  const rider = riderNotAsked(known);
  const panel = choice.wish === "panel" ? [] : panelNotLooked(known);
  const missing = [...rider, ...panel];
  if (missing.length === 0) return choice;
  const rules = [
    ...(rider.length > 0 ? ["fit-rider-first"] : []),
    ...(panel.length > 0 ? ["fit-panel-first"] : []),
  ];
  const also = choice.wish === "nothing" ? choice.also : [choice.wish, ...choice.also];
  return { ...choice, wish: "measure-more", rules, also, missing };
}

/** A saddle that the calculation does not bring to rest is never called right; what it rests on is read again. */
export function restsFirst(known: Known, choice: Choice): Choice {
  if (known.notAtRest === undefined) return choice;
  const rules = ["fit-does-not-rest", ...choice.rules.filter((rule) => rule !== "fit-all-inside")];
  if (choice.wish !== "nothing") return { ...choice, rules };
  return { ...choice, wish: "measure-more", rules, missing: BEARING_HEIGHTS };
}
