import type { Choice } from "./choice.ts";
import { lacksForExchange, lacksForPress } from "./evidence.ts";
import type { Fault } from "./faults.ts";
import { headChoice } from "./head.ts";
import type { Assume } from "./judged.ts";
import type { Known } from "./known.ts";
import { lacksOfOthers } from "./others.ts";
import { isTooWide, isWasted, wasted } from "./wasted.ts";

/** The head's part: a wasted back is not narrowed into, and a press wants its template and its hands. */
export function head(known: Known, faults: readonly Fault[], assume: Assume): Choice {
  if (isTooWide(faults) && isWasted(known, assume)) return wasted(known);
  if (known.tried.length === 0)
    return { wish: "measure-more", rules: ["fit-cannot-tell"], also: [], missing: known.lacking };
  const choice = headChoice(known, assume);
  const changeMm = choice.setting?.setting.changeMm ?? 0;
  if (changeMm < 0 && isWasted(known, assume)) return wasted(known);
  const lacks = lacksFor(known, choice, changeMm);
  return lacks === undefined ? choice : { ...choice, ...lacks, also: [choice.wish] };
}

/** Heads that other hands bend: what they become, they become for every horse of the saddle. */
const BENT: readonly Known["build"][] = ["barred-polymer", "solid-polymer"];

/** What the head's own choice still lacks, by how it would be moved. */
function lacksFor(known: Known, { wish, setting }: Choice, changeMm: number): Choice | undefined {
  if (wish === "change-plate" || wish === "change-insert")
    return lacksForExchange(known.horse, known.path, changeMm);
  if (wish === "other-way" && BENT.includes(known.build)) return lacksOfOthers(known, setting);
  if (wish !== "alter" && wish !== "set-back") return undefined;
  return lacksOfOthers(known, setting) ?? lacksForPress(known.horse, known.path, known.template, changeMm);
}
