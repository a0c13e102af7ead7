import {
  type Answer,
  answer,
  mayBeFitted,
  movedHeads,
  printOf,
  readCase,
  SEED,
  type Survey,
} from "../road.ts";

/** What one horse of one case came to: the ids in plain, everything else as a fingerprint of all its digits. */
export interface Figures {
  readonly answers: readonly string[];
  readonly answerPrint: string;
  readonly sweepPrint: string;
}

/** Changes of spread that are solved for the fingerprint, mm. */
const CHANGES = [-20, -12, -5, 0, 5, 12, 20];

/** Indexes of the horses of a case. */
export function horsesOf(text: string): number[] {
  const read = readCase(text);
  return read.ok ? read.survey.horses.map((_, index) => index) : [];
}

/** Every figure of the answers and of moved heads for one horse. */
export function figuresOf(text: string, horse: number): Figures {
  const read = readCase(text);
  if (!read.ok) throw new Error("this case was not accepted");
  const { all, last } = answered(read.survey, horse);
  const heads = mayBeFitted(read.survey, horse) ? movedHeads(read.survey, horse, SEED) : undefined;
  const moved = heads ? CHANGES.map((changeMm) => heads.at(changeMm)) : [];
  const { answers } = last;
  return {
    answers: [answers.horse.id, answers.saddle.id, answers.work.id, ...answers.work.also],
    answerPrint: printOf(all),
    sweepPrint: printOf(moved),
  };
}

/** Every answer on the way, worked out by one hand. */
function answered(survey: Survey, horse: number): { all: readonly Answer[]; last: Answer } {
  const road = answer(survey, { horse, seed: SEED });
  const all: Answer[] = [];
  for (;;) {
    const { done, value } = road.next();
    all.push(value);
    if (done) return { all, last: value };
  }
}
