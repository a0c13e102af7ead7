import { bendAnswer } from "./answer/bend.ts";
import { type DrawTable, joined } from "./answer/draw-table.ts";
import { DRAWS } from "./answer/draws.ts";
import { frameAnswer } from "./answer/frame.ts";
import { nextFor } from "./answer/next.ts";
import { panelOf } from "./answer/panel.ts";
import { platesAnswered } from "./answer/plates-after.ts";
import { type Answer, assembled } from "./answer/result.ts";
import { type Road, roadOf, toJudge } from "./answer/road.ts";
import { changedIn, type Drawn, drawnOn, judgedWith, type Settled, settledAt } from "./answer/settle.ts";
import { judgeCase } from "./judge/judge-case.ts";
import type { Setting } from "./reach/setting.ts";
import type { Survey } from "./survey/case.ts";

export type { Answer };

export interface AnswerOptions {
  /** Index of the horse in the case. */
  readonly horse: number;
  /** Whole number; the same seed gives the same draws. */
  readonly seed: number;
}

/** Draws between two answers of the generator. */
const BATCH = 250;
/** So often the draws may move the choice past the settings beside it, which are then drawn themselves; seen never yet. */
const CHOICES_MOST = 3;

/**
 * The road on one page. Readings become forms, every setting becomes a whole tree that rests on the back, and the
 * judge answers: at the means first, then after each batch of draws at today's and the chosen setting. The last answer
 * also names the one next reading. On a horse flag no setting, pressure or fit is worked out. The next draws of the same
 * settings may be handed in, worked out elsewhere; they change no digit.
 */
export function* answer(
  survey: Survey,
  { horse, seed }: AnswerOptions,
): Generator<Answer, Answer, DrawTable | undefined> {
  const road = roadOf(survey, horse, seed);
  let judged = judgeCase(toJudge(road));
  let now = begun(road, judged.answers.setting);
  const before: Drawn[] = [];
  while (now !== undefined && now.table.to < DRAWS) {
    const elsewhere = yield assembled({ road, seed, judged, ...now });
    now = drawnBy(elsewhere, now) ?? drawnOn(now, seed, BATCH);
    judged = judgedWith(road, [...before, now]);
    const { setting } = judged.answers;
    const moved = now.table.to === DRAWS && !isDrawn(now.settled, setting);
    if (moved && before.length < CHOICES_MOST) {
      before.push(now);
      now = begun(road, setting);
    }
  }
  const next = nextFor(road, judged.waitsFor, seed);
  const last = { ...judged, answers: { ...judged.answers, next } };
  const panel = panelOf(survey, now?.settled, last.answers, seed);
  const bend = bendAnswer(survey, road.settings, last.answers.setting, seed);
  const frame = frameAnswer(now?.settled, last.answers.setting, seed);
  const plates = platesAnswered(toJudge(road, now?.table), last.answers, seed);
  return assembled({ road, seed, judged: last, ...(now ?? NOTHING_DRAWN), panel, plates, bend, frame });
}

const NOTHING_DRAWN = { settled: undefined, table: { from: 0, to: 0, values: {} } };

function drawnBy(elsewhere: DrawTable | undefined, { settled, table }: Drawn): Drawn | undefined {
  return elsewhere?.from === table.to && elsewhere.to > table.to
    ? { settled, table: joined([table, elsewhere]) }
    : undefined;
}

/** Today's head is drawn always. */
function isDrawn(settled: Settled, setting: Setting | undefined): boolean {
  return setting === undefined || setting.way === "as-found" || changedIn(settled, setting) !== undefined;
}

function begun(road: Road, setting: Setting | undefined): Drawn | undefined {
  const settled = settledAt(road, setting);
  return settled && { ...NOTHING_DRAWN, settled };
}
