import type { JudgedLimit, LimitRule } from "../judge/judgement.ts";
import { limitRule } from "../judge/limits/all.ts";
import type { Judged, LimitRow } from "../report/sheet-data.ts";

/** Every limit that was read today or is known after the change, a row each, in the order of the work. */
export function limitRowsOf(today: readonly JudgedLimit[], after: readonly JudgedLimit[]): readonly LimitRow[] {
  const keyOf = ({ rule, at }: JudgedLimit) => `${rule} ${at}`;
  const later = new Map(after.map((limit) => [keyOf(limit), limit]));
  const rows = today.map((limit) => row(limit, later.get(keyOf(limit))));
  return rows.filter((one) => one.today.outcome !== "not-read" || (one.after !== undefined && one.after.outcome !== "not-read"));
}

function row(today: JudgedLimit, after: JudgedLimit | undefined): LimitRow {
  const rule = limitRule(today.rule);
  return {
    rule: [rule.quantity, today.at].filter((part) => part !== "").join(", ") + `: ${insideOf(rule)}`,
    unit: rule.unit,
    today: judged(today),
    after: after && judged(after),
  };
}

function judged({ value, u, outcome }: JudgedLimit): Judged {
  return value === undefined ? { figure: undefined, outcome: "not-read" } : { figure: { value, u }, outcome };
}

/** A limit's inside in words. */
export function insideOf({ inside: [lo, hi], unit }: LimitRule): string {
  const said = unit === "deg" ? "°" : ` ${unit}`;
  if (!Number.isFinite(lo)) return `up to ${hi}${said}`;
  if (!Number.isFinite(hi)) return `from ${lo}${said}`;
  return lo === -hi ? `within ± ${hi}${said}` : `${lo} to ${hi}${said}`.replace("-", "−");
}
