import { atan, PI } from "../../engine/number/index.ts";
import { isRead } from "../../survey/reading.ts";
import { limitRule } from "../limits/all.ts";
import { OPEN } from "../limits/bands.ts";
import type { Choice } from "./choice.ts";
import { type Fault, faultsOf, isWhole } from "./faults.ts";
import type { Assume, Judged } from "./judged.ts";
import type { Known } from "./known.ts";
import { judgeAll } from "./whole.ts";

/** Room over and beside the withers: a front that is filled lifts all of it. */
const ROOM: readonly string[] = [
  "clearance-girthed",
  "clearance-rider-up",
  "clearance-half-seat",
  "clearance-side",
];
const DEG_PER_RAD = 180 / PI;
/** Step in which a lift is looked for, mm. */
const STEP_MM = 1;

const isLow = ({ rule, value = OPEN }: Judged): boolean =>
  ROOM.includes(rule) && value < limitRule(rule).inside[0];

/** How far fill may still lift the front, mm: what a fill may be, less what today's head needs already. */
function roomToLiftMm({ fillMm }: Known): number {
  const [, most] = limitRule("fill").inside;
  const needed = [fillMm.near, fillMm.off].map((mm) => mm ?? most);
  return most - Math.max(0, ...needed);
}

/** A limit with the front lifted: more room at the withers, and a seat tipped back by that much over the panel's length. */
function lifted(limit: Judged, liftMm: number, lengthMm: number): Judged {
  if (limit.value === undefined) return limit;
  if (ROOM.includes(limit.rule)) return { ...limit, value: limit.value + liftMm };
  if (limit.rule !== "seat-slope") return limit;
  return { ...limit, value: limit.value + atan(liftMm / lengthMm) * DEG_PER_RAD };
}

/**
 * Too little room at the withers and nothing else wrong with the head: the front is filled, if the least lift that leaves
 * nothing outside and at most one between is within what fill may be. Undefined where it is not.
 */
export function liftFront(known: Known, faults: readonly Fault[], assume: Assume): Choice | undefined {
  const { panelEnd } = known.survey.saddle.bearing;
  const otherwise = faults.some((fault) => fault.ofFrame && !isLow(fault));
  if (!faults.some(isLow) || otherwise || !isRead(panelEnd)) return undefined;
  const most = roomToLiftMm(known);
  for (let mm = STEP_MM; mm <= most; mm += STEP_MM) {
    const after = judgeAll(
      known.today.map((limit) => lifted(limit, mm, panelEnd.value)),
      "today",
      undefined,
    );
    if (isWhole(faultsOf(after, assume))) return { wish: "panel", rules: ["fit-lift-front"], also: [] };
  }
  return undefined;
}
