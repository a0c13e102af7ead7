import { best, blocking, type Tried } from "./best-setting.ts";
import type { Choice, FitWish } from "./choice.ts";
import { faultsOf } from "./faults.ts";
import type { Assume } from "./judged.ts";
import type { Known } from "./known.ts";
import { isSetBack } from "./set-back.ts";

const shutOnlyBy = (tried: Tried, why: (reason: string) => boolean): boolean =>
  tried.candidate.setting.shutBy.length > 0 && tried.candidate.setting.shutBy.every(why);
const isCap = (reason: string): boolean => reason.startsWith("cap-");
const wantsReading = (reason: string): boolean =>
  reason === "mounting-not-read" || reason === "plate-not-seen-sound";
const wantsOtherHands = (reason: string): boolean =>
  reason.startsWith("no-such-plate") || reason.startsWith("not-calculated");

function wished(
  tried: Tried,
  wish: FitWish,
  rules: readonly string[],
  assume: Assume,
  more: Partial<Choice> = {},
): Choice {
  const left = faultsOf(tried.limits, assume).filter((fault) => fault.cure !== undefined);
  const also = [
    ...new Set(left.flatMap((fault): FitWish[] => (fault.cure === undefined ? [] : [fault.cure]))),
  ];
  return { wish, rules, also, setting: tried.candidate, limitsAfter: tried.limits, ...more };
}

/** A head that can be made here and now: by exchange, or at the press. */
function possible(known: Known, usable: readonly Tried[], assume: Assume): Choice | undefined {
  const one = best(
    usable.filter((tried) => tried.candidate.setting.shutBy.length === 0),
    assume,
  );
  if (one === undefined) return undefined;
  const { way, changeMm } = one.candidate.setting;
  if (way === "exchange") {
    return wished(
      one,
      known.build === "insert-exchanged" ? "change-insert" : "change-plate",
      ["fit-exchange"],
      assume,
    );
  }
  return isSetBack(known, changeMm)
    ? wished(one, "set-back", ["fit-set-back", "fit-press"], assume)
    : wished(one, "alter", ["fit-press"], assume);
}

/** The head that would fit, in the order: here, after a reading, by other hands, against the caps; else none does. */
export function headChoice(known: Known, assume: Assume): Choice {
  const usable = known.tried.filter(
    (tried) => tried.candidate.setting.way !== "press" || tried.harms.length === 0,
  );
  const here = possible(known, usable, assume);
  if (here !== undefined) return here;
  const unread = best(
    usable.filter((tried) => shutOnlyBy(tried, wantsReading)),
    assume,
  );
  if (unread !== undefined) {
    const missing = unread.candidate.setting.shutBy.includes("mounting-not-read")
      ? ["saddle.mounting"]
      : [`platesAtHand[${unread.candidate.setting.plate ?? 0}].sound`];
    return wished(unread, "measure-more", ["fit-cannot-tell"], assume, { missing });
  }
  const elsewhere = best(
    usable.filter((tried) => shutOnlyBy(tried, wantsOtherHands)),
    assume,
  );
  if (elsewhere !== undefined) {
    if (known.build === "insert-exchanged")
      return wished(elsewhere, "change-insert", ["fit-exchange"], assume);
    return wished(
      elsewhere,
      "other-way",
      known.build === "plate-exchanged" ? ["fit-no-plate-at-hand"] : [],
      assume,
    );
  }
  if (
    best(
      usable.filter((tried) => shutOnlyBy(tried, isCap)),
      assume,
    ) !== undefined
  ) {
    return { wish: "spent", rules: ["fit-spent"], also: [] };
  }
  const harms = known.tried.some(
    (tried) => tried.harms.length > 0 && blocking(faultsOf(tried.limits, assume)).length === 0,
  );
  return {
    wish: "other-saddle",
    rules: [...(harms ? ["right-harms-another"] : []), "fit-other-saddle"],
    also: [],
  };
}
