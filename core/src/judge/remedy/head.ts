import { BY_MAKERS_PEOPLE } from "../../reach/forming.ts";
import { best, blocking, isBent, type Tried } from "./best-setting.ts";
import type { Choice, FitWish } from "./choice.ts";
import { faultsOf } from "./faults.ts";
import type { Assume } from "./judged.ts";
import type { Known } from "./known.ts";
import { noSetBack } from "./set-back.ts";

/** Shut by such reasons alone. What nothing shuts was looked at before. */
const shutOnlyBy = (tried: Tried, why: (reason: string) => boolean): boolean =>
  tried.candidate.setting.shutBy.every(why);
const isCap = (reason: string): boolean => reason.startsWith("cap-");
const wantsReading = (reason: string): boolean =>
  reason === "mounting-not-read" || reason === "plate-not-seen-sound" || reason === "position-not-read";
const wantsOtherHands = (reason: string): boolean =>
  reason === BY_MAKERS_PEOPLE || reason.startsWith("no-such-") || reason.startsWith("not-calculated");

function wished(
  tried: Tried,
  wish: FitWish,
  rules: readonly string[],
  assume: Assume,
  more: Partial<Choice> = {},
): Choice {
  const also: readonly FitWish[] = [
    ...new Set(faultsOf(tried.limits, assume).flatMap(({ cure }) => cure ?? [])),
  ];
  return { wish, rules, also, setting: tried.candidate, limitsAfter: tried.limits, ...more };
}

/** A head that can be made here and now: by exchange, or at the press; a setting back where it is one. */
function possible(known: Known, usable: readonly Tried[], assume: Assume): Choice | undefined {
  const one = best(
    usable.filter((tried) => tried.candidate.setting.shutBy.length === 0),
    assume,
  );
  if (one === undefined) return undefined;
  const exchanges = one.candidate.setting.way === "exchange";
  const rule = exchanges ? "fit-exchange" : "fit-press";
  if (noSetBack(known, one.candidate.setting) === undefined)
    return wished(one, "set-back", ["fit-set-back", rule], assume);
  return wished(one, exchanges ? exchangeOf(known) : "alter", [rule], assume);
}

const exchangeOf = ({ build }: Known): FitWish =>
  build === "insert-exchanged" ? "change-insert" : "change-plate";

/** Where the reading that a setting waits for stands in the case. */
function unreadAt({ candidate: { setting } }: Tried): string {
  if (setting.shutBy.includes("mounting-not-read")) return "saddle.mounting";
  if (setting.shutBy.includes("position-not-read")) return "saddle.inserts.positions";
  return `platesAtHand[${setting.plate ?? 0}].sound`;
}

/** What a head that is made by other hands is told under; by the way's own rule where that says it all. */
const ELSEWHERE: { readonly [B in Known["build"]]?: readonly string[] } = {
  "plate-exchanged": ["fit-no-plate-at-hand"],
  "insert-exchanged": ["fit-no-position"],
  "solid-polymer": ["fit-heat"],
};

/** The head that would fit, in the order: here, after a reading, by other hands, against the caps; else none does. */
export function headChoice(known: Known, assume: Assume): Choice {
  const usable = known.tried.filter((tried) => !isBent(tried) || tried.harms.length === 0);
  const bestOf = (why: (reason: string) => boolean) =>
    best(
      usable.filter((tried) => shutOnlyBy(tried, why)),
      assume,
    );
  const here = possible(known, usable, assume);
  if (here !== undefined) return here;
  const unread = bestOf(wantsReading);
  if (unread !== undefined)
    return wished(unread, "measure-more", ["fit-cannot-tell"], assume, { missing: [unreadAt(unread)] });
  const elsewhere = bestOf(wantsOtherHands);
  if (elsewhere !== undefined) return wished(elsewhere, "other-way", ELSEWHERE[known.build] ?? [], assume);
  if (bestOf((reason) => isCap(reason) || reason === BY_MAKERS_PEOPLE) !== undefined)
    return { wish: "spent", rules: ["fit-spent"], also: [] };
  const harms = known.tried.some(
    (tried) => tried.harms.length > 0 && blocking(faultsOf(tried.limits, assume)).length === 0,
  );
  return {
    wish: "other-saddle",
    rules: [...(harms ? ["right-harms-another"] : []), "fit-other-saddle"],
    also: [],
  };
}
