import { isRead } from "../../survey/reading.ts";
import { limitRule } from "../limits/all.ts";
import { judgeLimit } from "../limits/judge-limit.ts";
import type { Choice } from "./choice.ts";
import type { Fault } from "./faults.ts";
import type { Assume, Judged } from "./judged.ts";
import type { Known } from "./known.ts";

/** A hollow over the limit on either side, on doubt: U counts against narrowing. One that was not read is taken as assumed. */
export function isWasted({ today }: Known, assume: Assume): boolean {
  const notTold = today.some(({ rule, value }) => rule === "hollow" && value === undefined);
  return hollowOn(today) || (notTold && assume === "outside");
}

/** A hollow over the limit on either side, on doubt, as the limits of the day were judged. */
export const hollowOn = (today: readonly Judged[]): boolean =>
  today.some(
    ({ rule, value, u }) =>
      rule === "hollow" && judgeLimit(limitRule(rule), value, u, "withdraw") === "outside",
  );

/** The head is too wide for this back: at the points every fault is slack. */
export function isTooWide(faults: readonly Fault[]): boolean {
  const front = faults.filter((fault) => fault.rule === "face-front" && fault.value !== undefined);
  return front.length > 0 && front.every((fault) => (fault.value ?? 0) < 0);
}

/** A wasted back is filled for now, never narrowed into; fill that is too deep waits for the horse. */
export function wasted({ fillMm }: Known): Choice {
  const [, most] = limitRule("fill").outside;
  const carries = [fillMm.near, fillMm.off].every((mm) => mm === undefined || mm <= most);
  return carries
    ? { wish: "panel", rules: ["fit-wasted"], also: [] }
    : { wish: "not-now", rules: ["fit-wasted", "fit-fill-too-deep"], also: [] };
}

/** Hollows that nobody laid a straight-edge over. */
export function hollowsNotRead({ horse, path }: Known): readonly string[] {
  const { hollowNear, hollowOff } = horse.standing;
  return [
    ...(isRead(hollowNear) ? [] : [`${path}.standing.hollowNear`]),
    ...(isRead(hollowOff) ? [] : [`${path}.standing.hollowOff`]),
  ];
}
