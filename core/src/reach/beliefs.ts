import { Doubts } from "../shape/doubt.ts";
import type { Deviations, Uncertain } from "../shape/model.ts";
import type { SurveyedSaddle } from "../survey/case.ts";
import { isRead, type Reading } from "../survey/reading.ts";
import type { Assumed } from "../terms/assumed.ts";

/** What was taken for a quantity: its range, or the reading that stands in its place. */
export interface Taken {
  readonly prior: Assumed;
  readonly reading: Reading | undefined;
}

export type ReinforcementWord = keyof SurveyedSaddle["reinforcement"];

/** Parts of a tree that are hidden, in one draw: in their ranges, or as read on what holds the head together. */
export class Beliefs {
  private readonly doubts = new Doubts();
  private readonly found = new Map<string, Taken>();
  private readonly reinforcement: SurveyedSaddle["reinforcement"];

  constructor({ reinforcement }: Pick<SurveyedSaddle, "reinforcement">) {
    this.reinforcement = reinforcement;
  }

  take(prior: Assumed, word?: ReinforcementWord): (deviations: Deviations) => number {
    const measured = word && this.reinforcement[word];
    const reading = measured && isRead(measured) ? measured : undefined;
    this.found.set(prior.id, { prior, reading });
    const value = this.doubts.takeWithin(`saddle.reinforcement.${word}`, measured, prior);
    const least = (reading?.value ?? prior.base) / LEAST_PART;
    return (deviations) => Math.max(least, value(deviations));
  }

  get taken(): readonly Taken[] {
    return [...this.found.values()];
  }

  get uncertain(): readonly Uncertain[] {
    return this.doubts.uncertain;
  }
}
/** A doubt is cut where hardly anything would be left of the part: at a fourth of it (assumption). */
const LEAST_PART = 4;
