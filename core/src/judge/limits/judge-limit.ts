import type { Outcome } from "../../terms/answers.ts";
import type { LimitRule } from "../judgement.ts";
import { bandOf, bandsIn } from "./bands.ts";

/** Part of U that has to be to spare (bench rule: a press cannot be called back; common practice, no source). */
export const SPARE_PART_OF_U = 0.5;

/**
 * One value against one limit, by what a wrong answer would cost. `value` and `u` in the rule's unit;
 * `u` is half of the central 95 % of the draws.
 *
 * - press: the band in which value plus and minus 0.5 U lies whole; where it reaches two bands, cannot tell.
 * - exchange: the band of the best estimate; the ridden check decides.
 * - leave: the band of the best estimate, unless value plus and minus 0.5 U reaches from inside to outside: cannot tell.
 * - withdraw: the worst band that value plus and minus U reaches.
 *
 * No value, or no uncertainty where one is needed: cannot tell.
 */
export function judgeLimit(
  rule: LimitRule,
  value: number | undefined,
  u: number | undefined,
  cost: LimitRule["cost"] = rule.cost,
): Outcome {
  if (value === undefined || !Number.isFinite(value)) return "cannot-tell";
  if (cost === "exchange") return bandOf(rule, value);
  if (u === undefined || !(u >= 0)) return "cannot-tell";
  const spare = cost === "withdraw" ? u : SPARE_PART_OF_U * u;
  const bands = bandsIn(rule, value - spare, value + spare);
  if (cost === "withdraw") return bands[bands.length - 1] ?? "cannot-tell";
  if (cost === "press") return bands.length === 1 ? (bands[0] ?? "cannot-tell") : "cannot-tell";
  return bands.includes("inside") && bands.includes("outside") ? "cannot-tell" : bandOf(rule, value);
}
