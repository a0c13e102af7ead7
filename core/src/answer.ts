import { DRAWS, type DrawTable, joined } from "./answer/draws.ts";
import { nextFor } from "./answer/next.ts";
import { type Answer, assembled } from "./answer/result.ts";
import { roadOf, toJudge } from "./answer/road.ts";
import { drawAt, judgedWith, settledAt } from "./answer/settle.ts";
import { judgeCase } from "./judge/judge-case.ts";
import type { Survey } from "./survey/case.ts";

export type { Answer };

export interface AnswerOptions {
  /** Index of the horse in the case. */
  readonly horse: number;
  /** Whole number; the same seed gives the same draws. */
  readonly seed: number;
}

/** Draws between two answers of the generator. */
const BATCH = 100;

/**
 * The road on one page. Readings become forms, every setting becomes a whole tree that rests on the back, and the
 * judge answers: at the means first, then after each batch of draws at today's and the chosen setting. The last answer
 * also names the one next reading. On a horse flag no setting, pressure or fit is worked out.
 */
export function* answer(survey: Survey, { horse, seed }: AnswerOptions): Generator<Answer, Answer> {
  const road = roadOf(survey, horse, seed);
  let judged = judgeCase(toJudge(road));
  const settled = settledAt(road, judged.answers.setting);
  const tables: DrawTable[] = [];
  for (let from = 0; settled !== undefined && from < DRAWS; from += BATCH) {
    yield assembled({ road, seed, judged, settled, table: joined(tables) });
    tables.push(drawAt(settled, seed, from, from + BATCH));
    judged = judgedWith(road, settled, joined(tables));
  }
  const next = nextFor(road, judged.waitsFor, seed);
  const last = { ...judged, answers: { ...judged.answers, next } };
  return assembled({ road, seed, judged: last, settled, table: joined(tables) });
}
