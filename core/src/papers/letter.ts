import type { Answer } from "../answer/result.ts";
import { workWords } from "../judge/answer-words.ts";
import type { Answered } from "../judge/judgement.ts";
import { type CautionId, cautionSays } from "../judge/words/cautions.ts";
import { dayInWords } from "../report/day.ts";
import type { LetterData } from "../report/letter-data.ts";
import { type Tongue, told } from "../report/tongue.ts";
import { aboutPath } from "../survey/about-path.ts";
import type { Survey } from "../survey/case.ts";
import type { WorkAnswer } from "../terms/answers.ts";
import { factsOf } from "./facts.ts";
import { followsInWords, leftInWords } from "./follows.ts";
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

/**
 * The owner's letter out of the answers, in this language; every sentence is chosen here, no figure is worked out. What somebody typed
 * stays as it was typed.
 */
export function letterDataOf(survey: Survey, answer: Answer, tongue: Tongue): LetterData {
  const { horse, saddle, work, next } = answer.answers;
  const { practice, visit } = survey;
  const say = (english: string) => told(tongue, english, { HORSE: answer.horse });
  const said = (parts: readonly string[]) => parts.map(say).join(" ").trim();
  const each = (all: readonly string[]) => all.map(say);
  const does = toldOf(answer.answers);
  const why = {
    horse: reasons(horse, survey, answer),
    saddle: reasons(saddle, survey, answer),
    work: reasons(work, survey, answer),
  };
  const before = new Set([...why.horse, ...why.saddle]);
  const found = (says: readonly string[], because: readonly string[], more: readonly string[] = []) => ({
    says: said(says),
    because: each([...because.slice(0, MOST_REASONS), ...more]),
  });
  return {
    facts: letterFacts(survey, answer, tongue),
    practice,
    owner: visit.owner,
    asked: visit.asked || say("Whether this saddle suits HORSE, and whether its head can be altered."),
    horse: found(horseForOwner(horse.id), why.horse, ofTheHorse(answer)),
    saddle: found(saddleForOwner(answer.answers), why.saddle),
    work: found(
      [workWords(work.id).heading, workMeaning(answer.answers)],
      why.work.filter((one) => !before.has(one)),
    ),
    mayIRide: said(rideForOwner(answer.answers, answer.answers.permitted)),
    willBeDone: each([
      ...does.will,
      ...panelForOwner(answer.panel),
      ...(next && work.id === "measure-more" ? [`First comes: ${aboutPath(next.path)}.`] : []),
    ]),
    willNotBeDone: each(does.not),
    follows: MOVES_THE_HEAD.includes(work.id) ? each(followsSaid(answer)) : [],
    nextVisit: said([does.next, soonerForOwner(answer.answers)]),
    whoMayDoIt: say(work.who),
    limits: limitsOf(survey).map(said),
  };
}

function followsSaid({ follows, answers }: Answer): readonly string[] {
  if (follows === undefined) return [];
  const [first, ...rest] = followsInWords(follows);
  if (first === undefined) return [];
  const { spreadMm } = follows.moved;
  const left = spreadMm === undefined ? [] : leftInWords(answers.limitsToday, answers.limitsAfter, spreadMm);
  return [first, ...left, ...rest];
}

function letterFacts(survey: Survey, answer: Answer, tongue: Tongue): LetterData["facts"] {
  const facts = factsOf(survey, answer);
  const elsewhere = SAID_ELSEWHERE.map(cautionSays);
  return {
    ...facts,
    // A case's title is the fitter's own note, and can say more than the letter does.
    caseTitle: told(tongue, "HORSE and its saddle", { HORSE: answer.horse }),
    cautions: facts.cautions.filter((says) => !elsewhere.includes(says)).map(tongue.say),
    stop: facts.stop.map(tongue.say),
  };
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
    return [ownerReason(rule) ?? says].filter((reason) => reason !== "");
  });
  return [...new Set([...faults, ...rules])];
}

function limitsOf({ saddle, visit }: Survey): readonly (readonly string[])[] {
  return [
    [
      `This holds for horse, saddle and rider as they were read on ${dayInWords(visit.date)}.`,
      ...(saddle.looked.level === "bare" ? [] : ["What lies under the saddle's cover was not seen."]),
    ],
    ["A vet, the maker and a qualified saddler come before it, and local rules apply."],
    [WORDS_FOR_OWNER],
  ];
}
