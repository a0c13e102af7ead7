import type { Because, LimitRule, Rule } from "./judgement.ts";
import { LIMITS } from "./limits/all.ts";
import { RULES } from "./rules/all.ts";

/** A rule or a limit by its id; an id that is not there is a fault of the caller. */
export function recordOf(id: string): Rule | LimitRule {
  const found = RULES.find((rule) => rule.id === id) ?? LIMITS.find((limit) => limit.id === id);
  if (found === undefined) throw new Error(`no rule "${id}"`);
  return found;
}

/** A rule as a reason: its sentence, its readings for this horse, its source. */
export function becauseOf(id: string, horseIndex: number): Because {
  const { says, readings, provenance, sourceRef } = recordOf(id);
  return {
    rule: id,
    says,
    readings: readings.map((path) => path.replace("horses[]", `horses[${horseIndex}]`)),
    provenance,
    sourceRef,
  };
}

export function reasons(ids: readonly string[], horseIndex: number): readonly Because[] {
  return [...new Set(ids)].map((id) => becauseOf(id, horseIndex));
}
