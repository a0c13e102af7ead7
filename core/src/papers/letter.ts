import type { Answer } from "../answer/result.ts";
import { horseWords, mayRideSays, saddleWords, workWords } from "../judge/answer-words.ts";
import type { Answered } from "../judge/judgement.ts";
import type { LetterData } from "../report/letter-data.ts";
import type { Survey } from "../survey/case.ts";
import type { Act } from "../terms/answers.ts";
import { factsOf } from "./facts.ts";
import { followsInWords } from "./follows.ts";

/** How often a saddle is looked at (a professional body of saddlers in the United Kingdom: at least twice a year). */
const NEXT_VISIT = "At least twice a year, six to eight weeks after any work, and at once when the horse's shape, work or mood changes.";

const NOT_DONE: readonly { readonly act: Act; readonly says: string }[] = [
  { act: "flock", says: "The panel is not worked on before that is cleared up." },
  { act: "exchange", says: "No plate or insert is changed before that is cleared up." },
  { act: "press-dressed", says: "The head is not put to a press inside the saddle." },
];

/** The owner's letter out of the answers; every sentence is chosen here, no figure is worked out. */
export function letterDataOf(survey: Survey, answer: Answer): LetterData {
  const { horse, saddle, work, permitted } = answer.answers;
  const { practice, visit } = survey;
  return {
    facts: factsOf(survey, answer),
    practice,
    owner: visit.owner,
    asked: visit.asked || `You asked whether this saddle suits ${answer.horse}, and whether its head can be altered.`,
    horse: found(horse, horseWords(horse.id)),
    saddle: found(saddle, saddleWords(saddle.id)),
    work: found(work, workWords(work.id)),
    mayIRide: mayRideSays(horse.id, saddle.id),
    willBeDone: [work.nextStep, ...work.also.map((id) => `Besides: ${lowerFirst(workWords(id).heading)}`)],
    willNotBeDone: [
      ...NOT_DONE.filter(({ act }) => !permitted.includes(act)).map(({ says }) => says),
      "Nothing is begun before you have agreed to it.",
    ],
    follows: answer.follows ? followsInWords(answer.follows) : [],
    nextVisit: NEXT_VISIT,
    whoMayDoIt: work.who,
    limits: limitsOf(survey),
  };
}

function found(answered: Answered<string>, words: { readonly heading: string; readonly meaning: string }) {
  return { says: `${words.heading} ${words.meaning}`, because: [...new Set(answered.because.map((one) => one.says))].slice(0, MOST_REASONS) };
}
/** A letter gives the first reasons; the working sheet gives all. */
const MOST_REASONS = 4;

function limitsOf({ saddle, visit }: Survey): readonly string[] {
  const cover = saddle.looked.level === "bare" ? [] : ["What lies under the saddle's cover was not seen."];
  return [
    `This holds for horse, saddle and rider as they were read on ${visit.date}.`,
    ...cover,
    "It takes the place of no vet, no maker and no qualified saddler, and local rules apply.",
  ];
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
