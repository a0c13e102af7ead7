import type { SurveyedHorse } from "../survey/case.ts";
import { SIDES, ZONES, type Zone } from "../terms/places.ts";

const WHERE: { readonly [Z in Zone]: string } = {
  "withers-top": "at the top of the withers",
  "withers-side": "at the side of the withers",
  "under-point": "under the tree point",
  "mid-back": "at the middle of the back",
  "last-ribs": "over the last ribs",
  loin: "at the loin",
  girth: "at the girth",
  breastbone: "at the breastbone",
  "neck-base": "at the base of the neck",
};
const HOW = ["", "a little", "clearly", "strongly"] as const;
/** A letter names so many places; more are counted. */
const MOST = 4;

/** Where the horse reacted to the hand, as it was noted: a place and a strength, never a meaning. */
export function whereItReacted(horse: SurveyedHorse): readonly string[] {
  const all = ZONES.flatMap((zone) => {
    const at = SIDES.map((side) => ({ side, touch: horse.hands[zone]?.[side] })).filter(
      ({ touch }) => touch && touch.grade > 0,
    );
    const strength = Math.max(0, ...at.map(({ touch }) => touch?.grade ?? 0));
    if (strength === 0) return [];
    const sides = at.length === 2 ? "on both sides" : `on the ${at[0]?.side ?? ""} side`;
    const again = at.some(({ touch }) => touch?.twice === "yes")
      ? ", and again when touched a second time"
      : "";
    return [`HORSE reacted ${HOW[strength] ?? ""} ${WHERE[zone]}, ${sides}${again}.`];
  });
  return all.length > MOST ? [...all.slice(0, MOST), `It reacted at ${all.length - MOST} more places.`] : all;
}
