import type { Answer } from "@treewright/core/answer.ts";
import type { JudgedLimit } from "@treewright/core/judge/judgement.ts";
import { limitRule } from "@treewright/core/judge/limits/all.ts";
import { printed } from "@treewright/core/report/figures.ts";
import { OUTCOME_WORDS } from "@treewright/core/report/outcome-mark.ts";
import { wrap } from "./columns.ts";

const FIGURE_WIDTH = 16;
const OUTCOME_WIDTH = 13;
/** What needs a look comes first. */
const order = ["outside", "cannot-tell", "between", "inside"] as const;

function limitLine({ rule, at, value, u, outcome }: JudgedLimit): string[] {
  const { quantity, unit, state } = limitRule(rule);
  const figure = value === undefined ? "not read" : printed({ value, u }, unit);
  const says = wrap(`${quantity}; ${at === "" ? state : at}`, FIGURE_WIDTH + OUTCOME_WIDTH + 2);
  const left = `  ${figure.padEnd(FIGURE_WIDTH)}${OUTCOME_WORDS[outcome].padEnd(OUTCOME_WIDTH)}`;
  return [left + (says[0] ?? "").trimStart(), ...says.slice(1)];
}

function table(title: string, limits: readonly JudgedLimit[]): string[] {
  const shown = order.flatMap((outcome) =>
    limits.filter((one) => one.value !== undefined && one.outcome === outcome),
  );
  if (shown.length === 0) return [];
  const unread = limits.length - shown.length;
  return [
    title,
    ...shown.flatMap(limitLine),
    ...(unread > 0 ? [`  and ${unread} that were not read`] : []),
    "",
  ];
}

/** Every limit that has a figure, with its U and how it came out; today, and after the change. */
export function limitLines({ answers }: Answer): string[] {
  return [...table("Today", answers.limitsToday), ...table("After the change", answers.limitsAfter)];
}
