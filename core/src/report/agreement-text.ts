import { horseWords, saddleWords, workWords } from "../judge/answer-words.ts";
import type { VisitDraft } from "../survey/recorded/draft.ts";
import { OF_VISIT } from "../survey/recorded/places.ts";
import { HORSE_ANSWERS, SADDLE_ANSWERS, WORK_ANSWERS } from "../terms/answers.ts";
import { dayInWords } from "./day.ts";

/** What is said where nothing was said: a gap is signed as a gap. */
const NOTHING = "Nothing was said.";

/** What stands under every agreement (common practice, no source; the law of the place goes before it). */
const ALWAYS = [
  "A tree can fail when it is altered, and an alteration may end what its maker promises.",
  "The old plate or inserts stay with the saddle. Pain, heat, swelling, a sore or lameness end the work until a vet has seen the horse.",
  "Who signs is of age, and is the legal owner of the saddle or acts for the owner.",
] as const;

/**
 * What is agreed in a visit, as the text that is shown and signed: the same entries give the same text, sign for sign. No name of
 * a person is in it unless somebody typed one.
 */
export function agreementText({ file, ofVisit }: VisitDraft): string {
  const said = (at: string): string => {
    const value = ofVisit.get(at);
    return typeof value === "string" && value.trim() !== "" ? value.trim() : NOTHING;
  };
  const horses = file.horses.map(({ name }) => name).join(", ");
  const place = file.visit.place === undefined ? "" : `, ${file.visit.place}`;
  return [
    `Agreed on ${dayInWords(file.visit.date)}${place}`,
    `Saddle: ${file.saddle.name}`,
    `Every horse of this visit that wears it: ${horses}. ${others(file)}`,
    ...answers(ofVisit),
    `What is done: ${said(OF_VISIT.agreedWork)}`,
    `Risks that were told: ${said(OF_VISIT.agreedRisks)}`,
    `The worse case, and what is done then: ${said(OF_VISIT.agreedWorse)}`,
    `The limit that is not passed: ${said(OF_VISIT.agreedLimit)}`,
    ...ALWAYS,
  ].join("\n");
}

function others({ saddle }: VisitDraft["file"]): string {
  const wear = saddle.standing?.othersWearIt;
  if (wear === "no") return "No other horse wears it.";
  if (wear === "yes") return "Other horses wear it too, and it was not judged for them.";
  return "Whether other horses wear it was not said.";
}

function answers(ofVisit: VisitDraft["ofVisit"]): readonly string[] {
  const heading = <Id extends string>(
    about: string,
    at: string,
    ids: readonly Id[],
    words: (id: Id) => { readonly heading: string },
  ): readonly string[] => {
    const id = ids.find((one) => one === ofVisit.get(at));
    return [`${about}: ${id === undefined ? "not answered." : words(id).heading}`];
  };
  return [
    ...heading("The horse", OF_VISIT.horseAnswer, HORSE_ANSWERS, horseWords),
    ...heading("The saddle", OF_VISIT.saddleAnswer, SADDLE_ANSWERS, saddleWords),
    ...heading("The work", OF_VISIT.workAnswer, WORK_ANSWERS, workWords),
  ];
}
