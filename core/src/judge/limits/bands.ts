import type { LimitRule } from "../judgement.ts";

export type Band = "inside" | "between" | "outside";

/** An end that is not a limit. No reading of this trade comes near it. */
export const OPEN = 1e6;

/** Round-off of a turn from radians and back: 46 less 44 degrees is still 2. Far below what any hand reads. */
const ROUND_OFF = 1e-9;

const isInside = ({ inside }: LimitRule, value: number): boolean =>
  value >= inside[0] - ROUND_OFF && value <= inside[1] + ROUND_OFF;
const isOutside = ({ outside }: LimitRule, value: number): boolean =>
  value < outside[0] - ROUND_OFF || value > outside[1] + ROUND_OFF;

/** The band of one value; a value on an end belongs to the milder band. */
export function bandOf(rule: LimitRule, value: number): Band {
  if (isInside(rule, value)) return "inside";
  return isOutside(rule, value) ? "outside" : "between";
}

/** All bands that the interval from `lo` to `hi` reaches, from inside to outside. */
export function bandsIn(rule: LimitRule, lo: number, hi: number): readonly Band[] {
  const { inside, outside } = rule;
  const meetsInside = hi >= inside[0] - ROUND_OFF && lo <= inside[1] + ROUND_OFF;
  const below = Math.min(hi, inside[0]) - Math.max(lo, outside[0]);
  const above = Math.min(hi, outside[1]) - Math.max(lo, inside[1]);
  const ends = [bandOf(rule, lo), bandOf(rule, hi)];
  const meetsBetween = below > ROUND_OFF || above > ROUND_OFF || ends.includes("between");
  return [
    ...(meetsInside ? (["inside"] as const) : []),
    ...(meetsBetween ? (["between"] as const) : []),
    ...(ends.includes("outside") ? (["outside"] as const) : []),
  ];
}
