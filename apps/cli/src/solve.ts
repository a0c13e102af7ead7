import { type Answer, answer } from "@treewright/core/answer.ts";
import type { Survey } from "@treewright/core/survey/case.ts";
import type { Desk } from "./desk.ts";

/** The draws of one case always start from the same number, so the same readings give the same figures everywhere. */
export const SEED = 1;
/** Nothing is told of work that ends sooner, ms. */
const PATIENCE_MS = 2000;

/** Answers for one horse; on long work a line now and then says how far it has come. */
export function solve(survey: Survey, horse: number, about: string, desk: Desk): Answer {
  const road = answer(survey, { horse, seed: SEED });
  let told = Date.now();
  for (;;) {
    const step = road.next();
    if (step.done) return step.value;
    const { count, of } = step.value.draws;
    if (Date.now() - told < PATIENCE_MS) continue;
    told = Date.now();
    desk.tell(`${about}: ${count} of ${of} draws`);
  }
}
