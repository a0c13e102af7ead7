import { describe, expect, it } from "vitest";
import {
  BUILDS,
  type Findings,
  HORSE_ORDERS,
  RIGHT_ORDERS,
  SOUNDNESS_ORDERS,
  STANDING_ORDERS,
  WAY_ORDERS,
} from "../../core/src/judge/findings/orders.ts";
import { findingsOf } from "../../core/src/judge/findings.ts";
import { type Gated, passGates } from "../../core/src/judge/gates.ts";
import type { Choice, FitWish } from "../../core/src/judge/remedy/choice.ts";
import { type Decided, throughGates } from "../../core/src/judge/remedy/through-gates.ts";
import type { Act, WorkAnswer } from "../../core/src/terms/answers.ts";
import { surveyWith } from "./case.ts";
import { statesOf } from "./states.ts";

const WISHES: readonly FitWish[] = [
  "nothing",
  "set-up",
  "panel",
  "not-now",
  "set-back",
  "change-plate",
  "change-insert",
  "alter",
  "other-way",
  "spent",
  "other-saddle",
  "measure-more",
];
/** The act that each answer asks somebody here to do today; one of several is enough. */
const ASKS: { readonly [W in WorkAnswer]?: readonly Act[] } = {
  nothing: ["ride"],
  "set-up": ["set-up"],
  panel: ["flock"],
  "change-plate": ["exchange"],
  "change-insert": ["exchange"],
  "alter-dressed": ["press-dressed"],
  "alter-stripped": ["press-bare"],
  "strip-first": ["strip"],
  "set-back": ["exchange", "press-dressed", "press-bare"],
};

const good = findingsOf(surveyWith({}), 0);
const bare: Findings = { ...good, soundness: { ...good.soundness, level: "bare", otherPart: "sound" } };

/** States of two gates at a time, the others as in a good case, dressed and bare. */
function* states(): Generator<Findings> {
  for (const horse of statesOf(HORSE_ORDERS)) yield { ...good, horse };
  for (const soundness of statesOf(SOUNDNESS_ORDERS)) yield { ...good, soundness };
  for (const from of [good, bare]) {
    for (const build of BUILDS)
      for (const way of statesOf(WAY_ORDERS))
        for (const right of statesOf(RIGHT_ORDERS)) yield { ...from, right, way: { ...way, build } };
    for (const standing of statesOf(STANDING_ORDERS)) {
      for (const right of statesOf(RIGHT_ORDERS)) yield { ...from, standing, right };
      for (const build of BUILDS)
        for (const told of WAY_ORDERS.told) yield { ...from, standing, way: { ...from.way, told, build } };
    }
  }
}

/** What is wrong with an answer that has come through the gates; undefined when nothing is. */
function wrong(gated: Gated, decided: Decided): string | undefined {
  const asks = ASKS[decided.id];
  if (asks !== undefined && !asks.some((act) => gated.permitted.includes(act)))
    return `${decided.id} is not permitted`;
  if (gated.flagged && decided.id !== "not-now") return `${decided.id} for a horse with a flag`;
  if (
    gated.saddle === "out-for-good" &&
    !gated.flagged &&
    !["other-saddle", "measure-more", "leave-as-found"].includes(decided.id)
  )
    return `${decided.id} for a broken tree`;
  if (decided.also.includes(decided.id)) return "said twice";
  return decided.rules.length === 0 ? "no rule" : undefined;
}

describe("every wish of the fit through the gates", () => {
  it("never comes out as an act that is not permitted, and never without a rule", () => {
    let count = 0;
    const faults: string[] = [];
    for (const findings of states()) {
      const gated = passGates(findings);
      for (const wish of WISHES) {
        const choice: Choice = { wish, rules: ["fit-cannot-tell"], also: [] };
        const fault = wrong(gated, throughGates(gated, findings, choice));
        if (fault !== undefined && faults.length < 5)
          faults.push(`${wish}: ${fault} in ${JSON.stringify(findings)}`);
        count++;
      }
    }
    console.log(`wishes through gates: ${count}`);
    expect(faults).toEqual([]);
  });
  it("the check sees an answer that passes a shut gate by", () => {
    const findings: Findings = { ...good, standing: { ...good.standing, mayPress: "may-not" } };
    expect(wrong(passGates(findings), { id: "alter-dressed", also: [], rules: ["fit-press"] })).toBeDefined();
  });
});
