import { type Answer, type AnswerOptions, answer } from "../answer.ts";
import type { Survey } from "../survey/case.ts";
import type { DrawTable } from "./draw-table.ts";
import { DRAWS } from "./draws.ts";
import type { Road } from "./road.ts";
import { drawAt, settledAt } from "./settle.ts";

/** Draws from..to-1 at today's setting, the one of that id and those beside it, worked out elsewhere. */
export type OtherHand = (settingId: string | undefined, from: number, to: number) => Promise<DrawTable>;

/** The second half of the draws is the other hand's. */
const HALF = DRAWS / 2;

/** Draws between two looks at whether they are still wanted. */
const SLICE = 50;

/**
 * What the other hand does, a slice at a time, to be joined: it goes the road by itself while the first does, so only
 * names and numbers pass between the two.
 */
export function* drawsElsewhere(
  road: Road,
  seed: number,
  settingId: string | undefined,
  from: number,
  to: number,
): Generator<DrawTable, void> {
  const settled = settledAt(
    road,
    road.settings.find(({ id }) => id === settingId),
  );
  if (settled === undefined) throw new RangeError(`${settingId}: nothing of this case can be drawn`);
  for (let at = from; at < to; at += SLICE) yield drawAt(settled, seed, at, Math.min(to, at + SLICE));
}

/** The answers of `answer`, digit for digit, with the draws shared between two workers. */
export async function* sharedAnswer(
  survey: Survey,
  options: AnswerOptions,
  otherHand: OtherHand,
): AsyncGenerator<Answer, Answer> {
  const road = answer(survey, options);
  let step = road.next();
  let drawn: Promise<DrawTable> | undefined;
  while (!step.done) {
    const { draws, answers } = step.value;
    drawn ??= heldBack(otherHand(answers.setting?.id, HALF, DRAWS));
    yield step.value;
    // Begun anew for another setting, one hand draws it all.
    const joins = draws.count === HALF ? await drawn : undefined;
    step = road.next(joins);
    if (joins !== undefined) drawn = Promise.resolve(NOTHING);
  }
  return step.value;
}

/** Who has stopped asking is not told that the draws were refused; who still waits is. */
function heldBack(drawn: Promise<DrawTable>): Promise<DrawTable> {
  drawn.catch(() => undefined);
  return drawn;
}

const NOTHING: DrawTable = { from: 0, to: 0, values: {} };
