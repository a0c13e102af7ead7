import { limitRule } from "../limits/all.ts";
import { BEARING_HEIGHTS } from "./at-rest.ts";
import { nothing, panel, panelFirst, setUp, wrongPlace } from "./before-head.ts";
import type { Choice } from "./choice.ts";
import { contradicted } from "./contradicted.ts";
import { faultsOf, unknowns } from "./faults.ts";
import { askedFirst, restsFirst } from "./first.ts";
import { head } from "./head-evidence.ts";
import type { Assume, Judged } from "./judged.ts";
import type { Known } from "./known.ts";
import { liftFront } from "./lift.ts";
import { riderFaults } from "./rider.ts";
import { hollowsNotRead } from "./wasted.ts";

const noHead: readonly Choice["wish"][] = ["spent", "other-saddle"];

/**
 * The first remedy whose predicted whole holds, with every limit that cannot be told taken as `assume`:
 * nothing, set-up, panel, then the head. The rider and a wrong panel come before the head, unless no head serves.
 */
function chooseAssuming(known: Known, assume: Assume): Choice {
  const faults = faultsOf(known.today, assume);
  if (wrongPlace(known, faults)) return { wish: "other-saddle", rules: ["fit-wrong-place"], also: [] };
  const byHead = (): Choice => head(known, faults, assume);
  const early =
    nothing(known, faults) ??
    setUp(faults) ??
    panel(known, faults, assume) ??
    liftFront(known, faults, assume);
  const rest = early ?? byHead();
  if (noHead.includes(rest.wish)) return rest;
  const then = (wish: "set-up" | "panel", ...rules: readonly string[]): Choice => ({
    wish,
    rules,
    also: rest.wish === wish ? rest.also : alsoOf(rest),
  });
  const rider = riderFaults(known);
  if (rider.length > 0) return then("set-up", ...rider);
  if (
    rest.wish !== "set-up" &&
    faults.some((fault) => fault.cure === "set-up" && fault.outcome === "outside")
  )
    return then("set-up", "fit-set-up");
  return panelFirst(known) && rest.wish !== "set-up" ? then("panel", "fit-panel-first") : rest;
}

/**
 * What to read for a limit that cannot be told: what is missing; the bearing's heights, where everything is there and the
 * whole was not brought to rest; or, read too widely, its readings again.
 */
function toRead({ rule, at, value, missing }: Judged, { path, lacking }: Known): readonly string[] {
  if (missing.length > 0) return missing;
  if (value === undefined) return lacking.length > 0 ? [] : BEARING_HEIGHTS;
  if (at.endsWith("template")) return [`${path}.template`];
  return limitRule(rule).readings.map((one) => one.replace("horses[]", path));
}

/** What waits behind a remedy that comes first. */
function alsoOf(choice: Choice): Choice["also"] {
  const { wish, also } = choice;
  return wish === "nothing" || wish === "measure-more" || wish === "not-now"
    ? also
    : [...new Set([wish, ...also])];
}

/**
 * If everything that cannot be told leads to the same remedy whether it is inside, between or outside, that remedy
 * is the answer, with the setting that holds at the worst; otherwise the readings that decide are named.
 */
function undecided(known: Known): Choice {
  const choice = chooseAssuming(known, "inside");
  const open = unknowns(known.today);
  const wideAfter = known.tried.some((tried) => unknowns(tried.limits).length > 0);
  const hollows = hollowsNotRead(known);
  if (open.length === 0 && !wideAfter && hollows.length === 0) return choice;
  const between = chooseAssuming(known, "between");
  const outside = chooseAssuming(known, "outside");
  if (between.wish === choice.wish && outside.wish === choice.wish) return outside;
  const after = known.tried.find((tried) => tried.candidate.setting.id === choice.setting?.setting.id);
  const missing = [...open, ...unknowns(after?.limits ?? [])].flatMap((limit) => toRead(limit, known));
  const named = [...new Set([...known.lacking, ...missing, ...(missing.length === 0 ? hollows : [])])];
  return {
    ...choice,
    wish: "measure-more",
    rules: ["fit-cannot-tell"],
    also: alsoOf(choice),
    missing: choice.missing ?? named,
  };
}

/** What is wrong with the rider is told beside whatever else is answered. */
function withRider(known: Known, choice: Choice): Choice {
  return { ...choice, rules: [...new Set([...choice.rules, ...riderFaults(known)])] };
}

/** The remedy, after what comes before it: readings that contradict, whether the saddle rests at all, the rider, the panel. */
export function choose(known: Known): Choice {
  const choice = undecided(known);
  const again = noHead.includes(choice.wish) ? contradicted(known) : undefined;
  return withRider(known, askedFirst(known, restsFirst(known, again ?? choice)));
}
