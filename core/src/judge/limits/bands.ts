import type { LimitRule } from "../judgement.ts";

export type Band = "inside" | "between" | "outside";

/** An end that is not a limit. No reading of this trade comes near it. */
export const OPEN = 1e6;

/** The band of one value; a value on an end belongs to the milder band. */
export function bandOf(rule: LimitRule, value: number): Band {
  if (value >= rule.inside[0] && value <= rule.inside[1]) return "inside";
  return value < rule.outside[0] || value > rule.outside[1] ? "outside" : "between";
}

/** All bands that the interval from `lo` to `hi` reaches, from inside to outside. */
export function bandsIn(rule: LimitRule, lo: number, hi: number): readonly Band[] {
  const { inside, outside } = rule;
  const meetsInside = hi >= inside[0] && lo <= inside[1];
  const meetsOutside = lo < outside[0] || hi > outside[1];
  const below = Math.max(lo, outside[0]) < Math.min(hi, inside[0]);
  const above = Math.max(lo, inside[1]) < Math.min(hi, outside[1]);
  const bands: Band[] = meetsInside ? ["inside"] : [];
  if (below || above || bandOf(rule, lo) === "between" || bandOf(rule, hi) === "between") bands.push("between");
  if (meetsOutside) bands.push("outside");
  return bands;
}
