import { recordOf } from "./because.ts";
import type { LimitRule, Rule } from "./judgement.ts";
import { LIMITS } from "./limits/all.ts";
import { rangeSays } from "./limits/range-words.ts";
import { RULES } from "./rules/all.ts";

/** Ids of every rule and limit, in the order of the gates and of the work. */
export function ruleIds(): readonly string[] {
  return [...RULES, ...LIMITS].map((rule) => rule.id);
}

const COST: { readonly [C in LimitRule["cost"]]: string } = {
  press: "for a press: inside only with half of the uncertainty to spare",
  exchange: "by the best estimate; the ridden check decides",
  leave:
    "by the best estimate; where half of the uncertainty reaches from inside to outside it cannot be told",
  withdraw: "on doubt: by the worst that the uncertainty reaches",
};

/** A rule in full, as plain lines of text: what it says, its limits, its readings, where it comes from. */
export function explainRule(id: string): string {
  const rule: Rule | LimitRule = recordOf(id);
  const limits =
    "inside" in rule
      ? [
          `quantity: ${rule.quantity} (${rule.state})`,
          `inside: ${rangeSays(rule.inside, rule.unit)}`,
          `between, where there is room: beyond inside, ${rangeSays(rule.outside, rule.unit)}; outside beyond that`,
          `judged: ${COST[rule.cost]}`,
        ]
      : [];
  return [
    id,
    rule.says,
    ...limits,
    `readings: ${rule.readings.join(", ")}`,
    `source: ${rule.sourceRef}`,
  ].join("\n");
}

/** Whether an id is that of a rule or limit. */
export const isRuleId = (id: string): boolean => ruleIds().includes(id);
