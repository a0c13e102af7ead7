import type { Answer } from "../answer/result.ts";
import { workWords } from "../judge/answer-words.ts";
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
import {
  horseForOwner,
  rideForOwner,
  saddleForOwner,
  soonerForOwner,
  WORDS_FOR_OWNER,
} from "./owner-says.ts";
import { whereItReacted } from "./owner-touch.ts";
import { toldOf, workMeaning } from "./owner-work.ts";
import { panelForOwner } from "./panel.ts";

/** A letter gives the first reasons; the working sheet gives all. */
const MOST_REASONS = 4;
const MOST_FAULTS = 3;
/** Cautions that the letter says in its own parts. */
const SAID_ELSEWHERE: readonly CautionId[] = ["saddle-under-cover", "work-consent", "horse-vet-asks"];
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
  const ofHorse = found(horseForOwner(horse.id, answer.horse), why.horse);
  const said = new Set([...why.horse, ...why.saddle]);
  return {
    facts: letterFacts(survey, answer),
    practice,
    owner: visit.owner,
    asked: visit.asked || `Whether this saddle suits ${answer.horse}, and whether its head can be altered.`,
    horse: { ...ofHorse, because: [...ofHorse.because, ...ofTheHorse(answer)] },
    saddle: found(saddleForOwner(answer.answers), why.saddle),
    work: found(
      `${workWords(work.id).heading} ${workMeaning(answer.answers)}`,
      why.work.filter((one) => !said.has(one)),
    ),
    mayIRide: rideForOwner(answer.answers, answer.answers.permitted, answer.horse),
    willBeDone: [
      ...told.will,
      ...panelForOwner(answer.panel),
      ...(next && work.id === "measure-more" ? [`First comes: ${aboutPath(next.path)}.`] : []),
    ],
    willNotBeDone: told.not,
    follows: answer.follows && MOVES_THE_HEAD.includes(work.id) ? followsInWords(answer.follows) : [],
    nextVisit: `${told.next} ${soonerForOwner(answer.answers, answer.horse)}`.trim(),
    whoMayDoIt: work.who,
    limits: limitsOf(survey),
  };
}

function letterFacts(survey: Survey, answer: Answer): LetterData["facts"] {
  const facts = factsOf(survey, answer);
  const elsewhere = SAID_ELSEWHERE.map(cautionSays);
  return {
    ...facts,
    // A case's title is the fitter's own note, and can say more than the letter does.
    caseTitle: `${answer.horse} and its saddle`,
    cautions: facts.cautions.filter((says) => !elsewhere.includes(says)),
  };
}

function found(says: string, because: readonly string[]) {
  return { says, because: because.slice(0, MOST_REASONS) };
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
    "A vet, the maker and a qualified saddler come before it, and local rules apply.",
    WORDS_FOR_OWNER,
  ];
}
