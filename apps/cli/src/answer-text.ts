import type { Answer } from "@treewright/core/answer.ts";
import {
  horseWords,
  mayRideSays,
  saddleWords,
  type Words,
  workWords,
} from "@treewright/core/judge/answer-words.ts";
import type { Answered } from "@treewright/core/judge/judgement.ts";
import { headLines } from "@treewright/core/papers/head-known.ts";
import { bodyLines, identityLines } from "@treewright/core/papers/horse-known.ts";
import { aboutPath } from "@treewright/core/survey/about-path.ts";
import type { Survey } from "@treewright/core/survey/case.ts";
import { beside, wrap } from "./columns.ts";
import { followLines } from "./follow-text.ts";
import { riddenLines } from "./gait-text.ts";
import { limitLines } from "./limit-text.ts";
import { panelLines } from "./panel-text.ts";
import { plateLines } from "./plates-answer-text.ts";
import { pressLines } from "./press-text.ts";
import { wholeTreeLines } from "./whole-tree-text.ts";

/** Readings named at most; a half empty case misses dozens. */
const MISSING_MOST = 6;
const isStop = (caution: string): boolean => caution.startsWith("STOP");

function answerLines(
  title: string,
  words: Words,
  answered: Answered<string>,
  also: readonly string[] = [],
): string[] {
  const reasons = answered.because.flatMap(({ rule, says, sourceRef }) => [
    ...wrap(`- ${says}`, 10, 2),
    ...wrap(`${rule}; ${sourceRef}`, 12),
  ]);
  return [
    ...beside(title, words.heading, 8),
    ...also.flatMap((text) => wrap(`also: ${text}`, 10, 2)),
    ...reasons,
    ...wrap(`next: ${answered.nextStep}`, 10, 2),
    ...wrap(`who: ${answered.who}`, 10, 2),
    "",
  ];
}

function missingLines(lacking: readonly string[]): string[] {
  if (lacking.length === 0) return [];
  const more = lacking.length - MISSING_MOST;
  return [
    "Missing for the whole fit",
    ...lacking.slice(0, MISSING_MOST).flatMap((path) => wrap(`- ${aboutPath(path)} (${path})`, 2, 2)),
    ...(more > 0 ? [`  and ${more} more`] : []),
    "",
  ];
}

/** What is said of the head beside the answers: what other hands are asked for, and why nothing is set back. */
function headKnownLines(survey: Survey, result: Answer): string[] {
  const lines = headLines(survey, result);
  return lines.length === 0 ? [] : ["The head", ...lines.flatMap((text) => wrap(`- ${text}`, 2, 2)), ""];
}

/** The horse by its numbers, its mass, its condition and what it carries: beside the answers. */
function knownLines(result: Answer): string[] {
  const lines = [...identityLines(result), ...(result.body ? bodyLines(result.body) : [])];
  if (lines.length === 0) return [];
  return ["The horse, and what it carries", ...lines.flatMap((text) => wrap(`- ${text}`, 2, 2)), ""];
}

function footLines({ engine, inputHash, seed, draws }: Answer): string[] {
  const drawn = draws.of === 0 ? "no draws" : `${draws.count} draws from seed ${seed}`;
  const text = `U: half of the central 95 % of the draws. Engine ${engine}, readings ${inputHash.slice(0, 12)}, ${drawn}.`;
  return wrap(text);
}

/** One answer for a person, 80 columns wide; stop signs first. */
export function answerText(survey: Survey, result: Answer): string[] {
  const { horse, saddle, work, next, permitted } = result.answers;
  const cautions = [...new Set([...horse.cautions, ...saddle.cautions, ...work.cautions])];
  const title = wrap(`${result.horse}, under ${result.saddle}`);
  return [
    ...title,
    "=".repeat(Math.max(...title.map((line) => line.length))),
    "",
    ...cautions.filter(isStop).flatMap((text) => [...wrap(text), ""]),
    ...wrap(mayRideSays(horse.id, saddle.id, permitted)),
    "",
    ...answerLines("Horse", horseWords(horse.id), horse),
    ...answerLines("Saddle", saddleWords(saddle.id), saddle),
    ...answerLines(
      "Work",
      workWords(work.id),
      work,
      work.also.map((id) => workWords(id).heading),
    ),
    ...(next ? ["The one reading to take next", ...wrap(next.says, 2), ""] : []),
    ...plateLines(result),
    ...limitLines(result),
    ...headKnownLines(survey, result),
    ...followLines(result),
    ...riddenLines(survey, result),
    ...panelLines(result),
    ...wholeTreeLines(result),
    ...pressLines(result),
    ...knownLines(result),
    ...missingLines(result.lacking),
    ...(cautions.some((text) => !isStop(text)) ? ["Cautions"] : []),
    ...cautions.filter((text) => !isStop(text)).flatMap((text) => wrap(`- ${text}`, 2, 2)),
    "",
    ...footLines(result),
  ];
}

/** Three headings of one answer, for a list of cases. */
export function answerBrief(caseName: string, { horse, answers }: Answer): string[] {
  return [
    ...wrap(`${caseName}: ${horse}`),
    ...beside("horse", horseWords(answers.horse.id).heading, 8),
    ...beside("saddle", saddleWords(answers.saddle.id).heading, 8),
    ...beside("work", workWords(answers.work.id).heading, 8),
    "",
  ];
}
