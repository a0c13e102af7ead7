import type { Candidate, CaseToJudge, MeasuredLimit } from "../input.ts";
import type { LimitRule } from "../judgement.ts";
import { limitRule } from "../limits/all.ts";
import { judgeLimit } from "../limits/judge-limit.ts";
import { curable } from "./cures.ts";
import type { Judged } from "./judged.ts";

type Cost = LimitRule["cost"];

const ANGLES: readonly string[] = ["face-front", "face-rail"];

/** Two angles subtracted neither open a press nor, being wide, shut one: a template does that. They are judged by best estimate. */
const isTwoAngles = ({ rule, at }: MeasuredLimit): boolean =>
  ANGLES.includes(rule) && !at.endsWith("template");

/** By what a wrong answer would cost. The feelers' evenness guards nothing twice: spread and face of the template come of them. */
function costFor(rule: LimitRule, limit: MeasuredLimit, way: "today" | "exchange" | "press"): Cost {
  if (way === "today" || rule.cost === "withdraw") return rule.cost;
  if (way === "exchange" || isTwoAngles(limit) || rule.id === "feeler" || rule.cost === "exchange")
    return "exchange";
  return curable(rule.id)?.ofHead === true ? "press" : rule.cost;
}

/** On the smaller side the tree, set to the larger one, lies slack: that is filled, and never a fault of the head. */
function isSlackOnSmallerSide(limit: MeasuredLimit, largerSide: CaseToJudge["largerSide"]): boolean {
  if (limit.rule !== "face-front" || largerSide === undefined || limit.side === undefined) return false;
  return limit.side !== largerSide && (limit.value ?? 0) < 0;
}

/** Each figure against its limit, by what a wrong answer would cost on the way that is thought of. */
export function judgeAll(
  limits: readonly MeasuredLimit[],
  way: "today" | "exchange" | "press",
  largerSide: CaseToJudge["largerSide"],
): readonly Judged[] {
  const warm = limits.some((limit) => limit.temper === "warm");
  return limits.map((limit) => {
    const rule = limitRule(limit.rule);
    const outcome = judgeLimit(rule, limit.value, limit.u, costFor(rule, limit, way));
    const slack = isSlackOnSmallerSide(limit, largerSide);
    const coldBetween = warm && limit.temper === "cold" && outcome === "between";
    return { ...limit, outcome: coldBetween ? "inside" : outcome, slack };
  });
}

const sameFigure = (a: MeasuredLimit, b: MeasuredLimit): boolean =>
  a.rule === b.rule && a.at === b.at && a.temper === b.temper;

/** Today's figures of these are no forecast; they are read or reckoned again after a change. */
const READ_AGAIN: readonly string[] = ["feeler", "fill"];

/** The whole after a change: what the candidate says, today's for the rest. The template's spread moves with the tips. */
export function afterChange(
  today: readonly MeasuredLimit[],
  { setting, after }: Candidate,
): readonly MeasuredLimit[] {
  const kept = today.flatMap((limit) => {
    if (READ_AGAIN.includes(limit.rule) || after.some((one) => sameFigure(one, limit))) return [];
    const moves = limit.rule === "spread-wanted" && limit.value !== undefined;
    return moves ? [{ ...limit, value: (limit.value ?? 0) + setting.changeMm }] : [limit];
  });
  return [...kept, ...after];
}
