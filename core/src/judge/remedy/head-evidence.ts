import { isRead } from "../../survey/reading.ts";
import type { Choice } from "./choice.ts";
import { lacksForExchange, lacksForPress, measure } from "./evidence.ts";
import type { Fault } from "./faults.ts";
import { headChoice } from "./head.ts";
import type { Assume } from "./judged.ts";
import type { Known } from "./known.ts";
import { lacksOfOthers } from "./others.ts";
import { isTooWide, isWasted, wasted } from "./wasted.ts";

/** The head's part: a wasted back is not narrowed into, and a press, or heat, wants its template and its hands. */
export function head(known: Known, faults: readonly Fault[], assume: Assume): Choice {
  if (isTooWide(faults) && isWasted(known, assume)) return wasted(known);
  if (known.tried.length === 0)
    return { wish: "measure-more", rules: ["fit-cannot-tell"], also: [], missing: known.lacking };
  const choice = headChoice(known, assume);
  const unread = unreadOfTemplate(known);
  if (choice.wish === "spent" && unread.length > 0 && isOpenToPress(known))
    return measure("fit-press-needs-template", unread);
  const changeMm = choice.setting?.setting.changeMm ?? 0;
  if (changeMm < 0 && isWasted(known, assume)) return wasted(known);
  const lacks = lacksFor(known, choice, changeMm);
  return lacks === undefined ? choice : { ...choice, ...lacks, also: [choice.wish] };
}

/** Feelers of the template that were not read, by path. */
const unreadOfTemplate = ({ horse, path }: Known): readonly string[] =>
  Object.entries(horse.template).flatMap(([name, feeler]) =>
    isRead(feeler) ? [] : [`${path}.template.${name}`],
  );

/** Some press is not shut: how far one would have to go decides, and two angles subtracted cannot tell that. */
const isOpenToPress = ({ tried }: Known): boolean =>
  tried.some(({ candidate: { setting } }) => setting.way === "press" && setting.shutBy.length === 0);

/** What the head's own choice still lacks, by how it would be moved; what is bent is bent for every horse of the saddle. */
function lacksFor(known: Known, { wish, setting }: Choice, changeMm: number): Choice | undefined {
  const way = wish === "measure-more" ? undefined : setting?.setting.way;
  if (way === "exchange") return lacksForExchange(known.horse, known.path, changeMm);
  if (way !== "press" && way !== "heat") return undefined;
  return lacksOfOthers(known, setting) ?? lacksForPress(known.horse, known.path, known.template, changeMm);
}
