import type { Answer } from "../answer/result.ts";
import { horseWords, mayRideSays, saddleWords, workWords } from "../judge/answer-words.ts";
import type { Answered } from "../judge/judgement.ts";
import { type CautionId, cautionSays } from "../judge/words/cautions.ts";
import { dayInWords } from "../report/day.ts";
import type { LetterData } from "../report/letter-data.ts";
import { aboutPath } from "../survey/about-path.ts";
import type { Survey } from "../survey/case.ts";
import type { WorkAnswer } from "../terms/answers.ts";
import { factsOf } from "./facts.ts";
import { followsInWords } from "./follows.ts";
import { faultSays, worstOf } from "./owner-faults.ts";
import { ofTheHorse } from "./owner-horse.ts";
import { ownerReason } from "./owner-reasons.ts";
import { whereItReacted } from "./owner-touch.ts";
import { toldOf, workMeaning } from "./owner-work.ts";
import { panelForOwner } from "./panel.ts";

/** A letter gives the first reasons; the working sheet gives all. */
const MOST_REASONS = 4;
const MOST_FAULTS = 3;
/** Cautions that the letter says in its own parts. */
const SAID_ELSEWHERE: readonly CautionId[] = ["saddle-under-cover", "work-consent"];
/** Answers that leave the fit as it is, or say nothing of it. */
const NO_FAULT_OF_FIT: readonly WorkAnswer[] = ["not-now", "leave-as-found", "nothing", "measure-more"];

/** Answers after which a head is moved; only for these an owner is told what follows. */
const MOVES_THE_HEAD: readonly WorkAnswer[] = [
  "change-plate",
  "change-insert",
  "alter-dressed",
  "alter-stripped",
  "strip-first",
  "set-back",
  "heat-by-maker",
  "colleague",
  "maker",
];

/** The owner's letter out of the answers; every sentence is chosen here, no figure is worked out. */
export function letterDataOf(survey: Survey, answer: Answer): LetterData {
  const { horse, saddle, work, next } = answer.answers;
  const { practice, visit } = survey;
  const told = toldOf(answer.answers, answer.horse);
  const why = {
    horse: reasons(horse, survey, answer),
    saddle: reasons(saddle, survey, answer),
    work: reasons(work, survey, answer),
  };
  const ofHorse = found(horseWords(horse.id), why.horse);
  const said = new Set([...why.horse, ...why.saddle]);
  return {
    facts: letterFacts(survey, answer),
    practice,
    owner: visit.owner,
    asked: visit.asked || `Whether this saddle suits ${answer.horse}, and whether its head can be altered.`,
    horse: { ...ofHorse, because: [...ofHorse.because, ...ofTheHorse(answer)] },
    saddle: found(saddleWords(saddle.id), why.saddle),
    work: found(
      { heading: workWords(work.id).heading, meaning: workMeaning(answer.answers) },
      why.work.filter((one) => !said.has(one)),
    ),
    mayIRide: rideSays(answer),
    willBeDone: [
      ...told.will,
      ...panelForOwner(answer.panel),
      ...(next && work.id === "measure-more" ? [`First comes: ${aboutPath(next.path)}.`] : []),
    ],
    willNotBeDone: told.not,
    follows: answer.follows && MOVES_THE_HEAD.includes(work.id) ? followsInWords(answer.follows) : [],
    nextVisit: `${told.next} Sooner where ${answer.horse}'s shape, work or mood changes.`,
    whoMayDoIt: work.who,
    limits: limitsOf(survey),
  };
}

function rideSays({ answers: { horse, saddle, work, permitted } }: Answer): string {
  const may = mayRideSays(horse.id, saddle.id, permitted);
  const watch = permitted.includes("ride") && !NO_FAULT_OF_FIT.includes(work.id);
  return watch
    ? `${may} It does not yet fit as it should: go easy, look at the back after each ride, and stop when it reacts.`
    : may;
}

function letterFacts(survey: Survey, answer: Answer): LetterData["facts"] {
  const facts = factsOf(survey, answer);
  const elsewhere = SAID_ELSEWHERE.map(cautionSays);
  return { ...facts, cautions: facts.cautions.filter((says) => !elsewhere.includes(says)) };
}

function found(words: { readonly heading: string; readonly meaning: string }, because: readonly string[]) {
  return { says: `${words.heading} ${words.meaning}`, because: because.slice(0, MOST_REASONS) };
}

/** Reasons in the owner's words: first what is wrong on this horse, then what the rules say of it. */
function reasons({ because }: Answered<string>, survey: Survey, answer: Answer): readonly string[] {
  const own = survey.horses[answer.horseIndex];
  const touched = own ? whereItReacted(own) : [];
  const worst = because.map(({ rule }) => worstOf(rule, answer.answers.limitsToday));
  // Beside springs the gap is told with what they have to do with it.
  const sprung = because.some(({ rule }) => rule === "fit-springs");
  const faults = [
    ...worst.filter((one) => one?.outcome === "outside"),
    ...worst.filter((one) => one?.outcome !== "outside"),
  ]
    .filter((one) => !(sprung && one?.rule === "bridge"))
    .flatMap((one) => (one && faultSays(one)) ?? [])
    .slice(0, sprung ? MOST_FAULTS - 1 : MOST_FAULTS);
  const rules = because.flatMap(({ rule, says }, i): readonly string[] => {
    if (worst[i] !== undefined) return [];
    if (rule.startsWith("horse-pain-") && touched.length > 0) return touched;
    return [ownerReason(rule, answer.horse) ?? says].filter((reason) => reason !== "");
  });
  return [...new Set([...faults, ...rules])];
}

function limitsOf({ saddle, visit }: Survey): readonly string[] {
  const cover = saddle.looked.level === "bare" ? "" : " What lies under the saddle's cover was not seen.";
  return [
    `This holds for horse, saddle and rider as they were read on ${dayInWords(visit.date)}.${cover}`,
    "It takes the place of no vet, no maker and no qualified saddler, and local rules apply.",
  ];
}
