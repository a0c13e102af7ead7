import { horseWords, saddleWords, workWords } from "../judge/answer-words.ts";
import type { VisitDraft } from "../survey/recorded/draft.ts";
import { OF_VISIT } from "../survey/recorded/places.ts";
import { HORSE_ANSWERS, SADDLE_ANSWERS, WORK_ANSWERS } from "../terms/answers.ts";
import { dayInWords } from "./day.ts";
import { ENGLISH, type Tongue, told } from "./tongue.ts";

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
 * a person is in it unless somebody typed one. What was typed stays as it was typed, in whatever language.
 */
export function agreementText({ file, ofVisit }: VisitDraft, tongue: Tongue = ENGLISH): string {
  const said = (english: string, at: string): string => {
    const value = ofVisit.get(at);
    const typed = typeof value === "string" && value.trim() !== "" ? value.trim() : tongue.say(NOTHING);
    return told(tongue, english, { SAID: typed });
  };
  return [
    agreedOn(file, tongue),
    told(tongue, "Saddle: SADDLE", { SADDLE: file.saddle.name }),
    `${told(tongue, "Every horse of this visit that wears it: HORSES.", {
      HORSES: file.horses.map(({ name }) => name).join(", "),
    })} ${tongue.say(others(file))}`,
    ...answers(ofVisit, tongue),
    said("What is done: SAID", OF_VISIT.agreedWork),
    said("Risks that were told: SAID", OF_VISIT.agreedRisks),
    said("The worse case, and what is done then: SAID", OF_VISIT.agreedWorse),
    said("The limit that is not passed: SAID", OF_VISIT.agreedLimit),
    ...ALWAYS.map(tongue.say),
  ].join("\n");
}

function agreedOn({ visit }: VisitDraft["file"], tongue: Tongue): string {
  const on = told(tongue, "Agreed on DAY", { DAY: tongue.say(dayInWords(visit.date)) });
  return visit.place === undefined ? on : `${on}, ${visit.place}`;
}

function others({ saddle }: VisitDraft["file"]): string {
  const wear = saddle.standing?.othersWearIt;
  if (wear === "no") return "No other horse wears it.";
  if (wear === "yes") return "Other horses wear it too, and it was not judged for them.";
  return "Whether other horses wear it was not said.";
}

function answers(ofVisit: VisitDraft["ofVisit"], tongue: Tongue): readonly string[] {
  const heading = <Id extends string>(
    english: string,
    at: string,
    ids: readonly Id[],
    words: (id: Id) => { readonly heading: string },
  ): string => {
    const id = ids.find((one) => one === ofVisit.get(at));
    return told(tongue, english, {
      ANSWER: tongue.say(id === undefined ? "not answered." : words(id).heading),
    });
  };
  return [
    heading("The horse: ANSWER", OF_VISIT.horseAnswer, HORSE_ANSWERS, horseWords),
    heading("The saddle: ANSWER", OF_VISIT.saddleAnswer, SADDLE_ANSWERS, saddleWords),
    heading("The work: ANSWER", OF_VISIT.workAnswer, WORK_ANSWERS, workWords),
  ];
}
