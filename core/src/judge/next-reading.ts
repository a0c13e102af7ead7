import type { Survey } from "../survey/case.ts";
import { getAt, stepsOf } from "../survey/path.ts";
import { type Question, questions } from "../survey/questions.ts";
import type { WorkAnswer } from "../terms/answers.ts";
import type { NextReading } from "./judgement.ts";
import { counterparts } from "./next/counterparts.ts";
import { missingTraces, readingSays } from "./next/traces.ts";

/** What the case would answer with one reading set to a value, as it would be typed; every other reading at its mean. */
export type AnswerWith = (path: string, value: number | string) => WorkAnswer;

/** How many values of a reading's allowed range are tried. */
export const VALUES_TRIED = 5;
const NOT_ANSWERS: readonly string[] = [
  "unknown",
  "not-asked",
  "not-looked",
  "not-told",
  "not-said",
  "not-tried",
];

/** Five values from lowest to highest allowed, or the words that are answers; none where a value cannot be made up (a trace). */
export function valuesToTry({
  range,
  words,
}: Pick<Question, "range" | "words">): readonly (number | string)[] {
  if (words !== undefined) return words.filter((word) => !NOT_ANSWERS.includes(word)).slice(0, VALUES_TRIED);
  if (range === undefined) return [];
  const [lo, hi] = range;
  return Array.from({ length: VALUES_TRIED }, (_, i) => lo + ((hi - lo) * i) / (VALUES_TRIED - 1));
}

interface Tried {
  readonly path: string;
  readonly leadsTo: readonly WorkAnswer[];
  /** Most values that share one answer, as part of all tried: the smaller, the better it splits. */
  readonly largestPart: number;
}

type Asked = Pick<Question, "path" | "range" | "words">;

/** Five values of the range or the words, and what the reading's counterparts were read at. */
function tryReading(survey: Survey, question: Asked, answerWith: AnswerWith): Tried {
  const likely = question.range === undefined ? [] : counterparts(survey, question.path);
  const answers = [...valuesToTry(question), ...likely].map((value) => answerWith(question.path, value));
  const leadsTo = [...new Set(answers)];
  const most = Math.max(0, ...leadsTo.map((id) => answers.filter((one) => one === id).length));
  return { path: question.path, leadsTo, largestPart: answers.length === 0 ? 1 : most / answers.length };
}

/** No value can be tried in an item of a list that nobody has begun. */
function isThere(survey: Survey, path: string): boolean {
  const item = /^(?:saddle\.past\.alterations|saddle\.inserts\.positions|platesAtHand)\[\d+\]/.exec(
    path,
  )?.[0];
  return item === undefined || getAt(survey, stepsOf(item)) !== undefined;
}

/** A word that stands is known, and of a trace only its points are drawn again, unless that very place is waited for. */
function isAskedAgain(survey: Survey, { path, words }: Question): boolean {
  if (/\.traces\[/.test(path)) return path.endsWith(".points");
  const stands = getAt(survey, stepsOf(path));
  return words === undefined || stands === undefined || NOT_ANSWERS.includes(String(stands));
}

/** The places that are waited for as questions, in the order of the work; a trace that is not there comes with the tracings. */
function asked(survey: Survey, waitsFor: readonly string[]): readonly Asked[] {
  return questions(survey.horses.length).flatMap((question) => {
    const { path } = question;
    const under = waitsFor.some((place) => path.startsWith(`${place}.`) || path.startsWith(`${place}[`));
    const isHere =
      isThere(survey, path) && (waitsFor.includes(path) || (under && isAskedAgain(survey, question)));
    return [...missingTraces(path, waitsFor), ...(isHere ? [question] : [])];
  });
}

/**
 * The reading that splits the answers most, out of those the case waits for; ties go by the order of the work.
 * One whose every value gives the same settled answer is not asked for. Where none splits alone (several are
 * missing at once, or a trace is, whose values cannot be made up), the first in the order of the work is asked for.
 */
export function nextReading(
  survey: Survey,
  waitsFor: readonly string[],
  answerWith: AnswerWith,
): NextReading | undefined {
  const tried = asked(survey, waitsFor).map((question) => tryReading(survey, question, answerWith));
  const splits = tried.filter((one) => one.leadsTo.length > 1);
  const best = splits.reduce<Tried | undefined>(
    (least, one) => (least === undefined || one.largestPart < least.largestPart ? one : least),
    undefined,
  );
  const open = tried.find((one) => one.leadsTo.length === 0 || one.leadsTo[0] === "measure-more");
  const chosen = best ?? open;
  if (chosen === undefined) return undefined;
  return { path: chosen.path, says: `Read next: ${readingSays(chosen.path)}.`, leadsTo: chosen.leadsTo };
}
