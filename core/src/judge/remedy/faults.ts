import type { JudgedLimit } from "../judgement.ts";
import { CURES, type Cure, curable, cureOf } from "./cures.ts";
import type { Assume, Judged } from "./judged.ts";

export interface Fault extends Judged {
  readonly outcome: "between" | "outside";
  readonly cure: Cure | undefined;
  readonly ofHead: boolean;
  readonly ofFrame: boolean;
}

/** A needed limit of which nothing at all was handed in is as unknown as one without a value. */
export function withNeeded(limits: readonly Judged[]): readonly Judged[] {
  const absent = Object.entries(CURES).filter(
    ([rule, at]) => at?.needed === true && !limits.some((one) => one.rule === rule),
  );
  const unknown = absent.map(([rule]): Judged => {
    return {
      rule,
      at: "",
      value: undefined,
      u: undefined,
      missing: [],
      outcome: "cannot-tell",
      slack: false,
    };
  });
  return [...limits, ...unknown];
}

/** Read in this state only as a help; its absence asks for nothing. */
const isOptional = (limit: Judged): boolean =>
  curable(limit.rule)?.needed !== true ||
  (limit.rule === "clearance-side" && limit.at.startsWith("rider up"));

/** Limits that belong to the whole and cannot be told: those that are needed, and those that were read too widely. */
export function unknowns(limits: readonly Judged[]): readonly Judged[] {
  return limits.filter(
    (one) =>
      curable(one.rule) !== undefined &&
      one.outcome === "cannot-tell" &&
      !(one.value === undefined && isOptional(one)),
  );
}

/** What lies between or outside, with what cures it; a limit that cannot be told is taken as `assume`. */
export function faultsOf(limits: readonly Judged[], assume: Assume): readonly Fault[] {
  const open = new Set(unknowns(limits));
  return limits.flatMap((limit) => {
    const at = curable(limit.rule);
    const outcome = open.has(limit) ? assume : limit.outcome;
    if (at === undefined || (outcome !== "between" && outcome !== "outside")) return [];
    const judged: JudgedLimit = { ...limit, outcome };
    if (limit.slack) return [{ ...limit, outcome, cure: "panel" as const, ofHead: false, ofFrame: false }];
    return [{ ...limit, outcome, cure: cureOf(judged), ofHead: at.ofHead, ofFrame: at.ofFrame }];
  });
}

/** Nothing outside and at most one between. */
export function isWhole(faults: readonly Fault[]): boolean {
  return faults.every((fault) => fault.outcome === "between") && faults.length <= 1;
}
