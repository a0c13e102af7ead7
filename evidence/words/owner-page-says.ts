import { ownerQuestions } from "@treewright/core/judge/owner/asks.ts";
import { ownerQuestionSchema } from "@treewright/core/judge/owner/question.ts";
import { ownerHorseSays, ownerSaddleSays } from "@treewright/core/judge/owner/words.ts";
import { answerOwner, type OwnerAnswer } from "@treewright/core/judge/owner.ts";
import { HORSE_ANSWERS, SADDLE_ANSWERS } from "@treewright/core/terms/answers.ts";
import { DRAWINGS } from "../../apps/web/src/owner/drawings.ts";
import { PAGE_WORDS } from "../../apps/web/src/owner/page-words.ts";
import { statesOf } from "../gates/states.ts";

/*
 * Every sentence that the owner's page can have: its own words, the questions, and the answers to what is told of each head, with
 * each single thing wrong.
 */
const BUILT = {
  arch: ["wood", "polymer", "composite", "unknown"],
  metal: ["none", "bar", "plates", "unknown"],
  exchange: ["none", "plate", "insert", "unknown"],
  makerAllowsOwner: ["yes", "no", "dont-know"],
  inWarranty: ["yes", "no", "dont-know"],
} as const;

export function ownerPageSays(): ReadonlySet<string> {
  return new Set([
    ...Object.values(PAGE_WORDS),
    ...Object.values(DRAWINGS).map(({ says }) => says),
    ...ownerQuestions().map(({ asks }) => asks),
    ...HORSE_ANSWERS.flatMap(ownerHorseSays),
    ...SADDLE_ANSWERS.flatMap(ownerSaddleSays),
    ...answers().flatMap(sentencesOf),
  ]);
}

const sentencesOf = ({ stops, says, atHome, see, because }: OwnerAnswer): readonly string[] => [
  ...stops,
  ...says.horse,
  ...says.saddle,
  ...atHome,
  ...see.flatMap(({ who, why }) => [who, why]),
  ...because.map((one) => one.says),
];

/** Each head with all else well, with nothing known, and with one thing at a time wrong. */
function answers(): readonly OwnerAnswer[] {
  const asked = ownerQuestions();
  const wells = asked
    .filter(({ name, words }) => !(name in BUILT) && words.includes("no"))
    .map(({ group, name }) => ({ group, name, word: GOOD.includes(name) ? "yes" : "no" }));
  const heads = [...statesOf(BUILT)];
  const others = asked.flatMap(({ group, name, words }) => words.map((word) => ({ group, name, word })));
  return [
    ...heads.map((head) => answerOwner(questionOf(wells, head))),
    ...heads.map((head) => answerOwner(ownerQuestionSchema.parse(head))),
    ...others.map((one) => answerOwner(questionOf([...wells, one], {}))),
  ];
}

/** Where "yes" is the good answer. */
const GOOD = ["toldByMaker", "underFiveYears", "ownedSinceNew", "youOwnIt"];

function questionOf(
  said: readonly { readonly group: string; readonly name: string; readonly word: string }[],
  head: object,
) {
  const accidents = Object.fromEntries(
    said.filter(({ group }) => group !== "").map(({ name, word }) => [name, word]),
  );
  const rest = Object.fromEntries(
    said.filter(({ group }) => group === "").map(({ name, word }) => [name, word]),
  );
  return ownerQuestionSchema.parse({ ...rest, ...head, accidents });
}
