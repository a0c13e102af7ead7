import type { Act, WorkAnswer } from "../../terms/answers.ts";
import type { Findings } from "../findings/orders.ts";
import type { Shut } from "../gates/gate.ts";
import type { Gated } from "../gates.ts";
import { actOf, answerOf, pressRoute } from "./acts.ts";
import type { Choice } from "./choice.ts";
import { barOnOthers, wayRules } from "./other-hands.ts";

export interface Decided {
  readonly id: WorkAnswer;
  readonly also: readonly WorkAnswer[];
  readonly rules: readonly string[];
}

/** The first gate's bars on an act, and what standing says of it beside them. */
const barsOn = (gated: Gated, act: Act): readonly Shut[] => gated.shut.filter((shut) => shut.act === act);

/** Stripping is itself an act that standing or right may shut; then who can do it comes first. */
function stripFirst(gated: Gated, bar: Shut, beside: readonly WorkAnswer[], later: readonly Shut[]): Decided {
  const shut = barsOn(gated, "strip");
  const first = shut[0];
  const standing = later.map((one) => one.leadsTo).filter((id) => id !== "strip-first");
  if (first === undefined)
    return decided("strip-first", [...standing, ...beside], [bar.rule, ...later.map((one) => one.rule)]);
  return decided(first.leadsTo, ["strip-first", ...standing, ...beside], [first.rule, bar.rule]);
}

function decided(id: WorkAnswer, also: readonly WorkAnswer[], rules: readonly string[]): Decided {
  return { id, also: [...new Set(also)].filter((one) => one !== id), rules: [...new Set(rules)] };
}

/** The gates' own word, where riding, or all work for this horse, is shut: it stands before any fit. */
function beforeFit(gated: Gated, f: Findings): Decided | undefined {
  const saddle = gated.passed.soundness.shut.find((shut) => shut.act === "ride");
  if (gated.flagged) {
    const rules = gated.passed.horse.shut
      .filter((shut) => shut.leadsTo === "not-now")
      .map((shut) => shut.rule);
    // No saddle is looked for on the day of a flag, a broken one's own answer notwithstanding.
    const beside = saddle === undefined || saddle.leadsTo === "other-saddle" ? [] : [saddle.leadsTo];
    return decided("not-now", beside, rules);
  }
  const horse = gated.passed.horse.shut.find((shut) => shut.act === "set-up");
  const first = horse ?? gated.shut.find((shut) => shut.act === "ride");
  if (first === undefined) return undefined;
  const beside = saddle === undefined || saddle === first ? [] : [saddle.leadsTo];
  if (first.leadsTo === "strip-first") return stripFirst(gated, first, beside, []);
  const toMaker = first.rule === "saddle-part-failed" && f.standing.warranty === "taken-to-run";
  const rules = gated.shut
    .filter((shut) => shut.act === (horse ? "set-up" : "ride"))
    .map((shut) => shut.rule);
  return decided(toMaker ? "maker" : first.leadsTo, toMaker ? [first.leadsTo, ...beside] : beside, rules);
}

/** The fit's wish, taken through the gates in their order. What standing removes is said beside what the fit asks for. */
export function throughGates(gated: Gated, f: Findings, choice: Choice): Decided {
  const route = pressRoute(gated, f, choice);
  const wished = answerOf(choice.wish, route, gated);
  const before = beforeFit(gated, f);
  if (before !== undefined) {
    const noRepair = before.id === "colleague" || before.id === "maker";
    return noRepair && (wished === "other-saddle" || wished === "spent")
      ? decided(wished, [before.id], [...before.rules, ...choice.rules])
      : before;
  }
  const beside = choice.also.map((wish) => answerOf(wish, route, gated));
  if (f.standing.mayAssess === "may-not" && choice.wish !== "measure-more")
    return withChoice(decided("colleague", [wished, ...beside], ["standing-may-not-assess"]), choice);
  const others = choice.wish === "other-way" ? barOnOthers(gated, f) : undefined;
  if (others !== undefined) {
    const one =
      others.leadsTo === "strip-first"
        ? stripFirst(gated, others, [wished, ...beside], [])
        : decided(others.leadsTo, [wished, ...beside], [others.rule, ...wayRules(gated)]);
    return withChoice(one, choice);
  }
  const act = actOf(choice.wish, route, f);
  const shut = act === undefined ? [] : barsOn(gated, act);
  const first = shut[0];
  if (first === undefined) {
    const way = choice.wish === "other-way" ? wayRules(gated) : [];
    return decided(wished, beside, [...choice.rules, ...way]);
  }
  if (first.leadsTo === "strip-first")
    return withChoice(stripFirst(gated, first, [wished, ...beside], laterGates(gated, shut)), choice);
  return withChoice(
    decided(
      first.leadsTo,
      [...laterGates(gated, shut).map((one) => one.leadsTo), wished, ...beside],
      shut.map((one) => one.rule),
    ),
    choice,
  );
}

const withChoice = (one: Decided, choice: Choice): Decided => ({
  ...one,
  rules: [...new Set([...one.rules, ...choice.rules])],
});

/** What standing and way say of an act besides the first bar. */
function laterGates(gated: Gated, shut: readonly Shut[]): readonly Shut[] {
  const standing = [...gated.passed.standing.shut, ...gated.passed.way.shut];
  return shut.slice(1).filter((one) => standing.includes(one) && one.leadsTo !== "measure-more");
}
