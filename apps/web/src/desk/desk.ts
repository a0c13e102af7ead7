import { valueAt } from "../case/put.ts";
import { type Accepted, type Answer, type Problem, type Station, type SweepPoint, stepsOf } from "../road.ts";

/** A reading that was typed and not accepted: it is kept and shown, and is not in the case. */
export interface Refused {
  readonly typed: string;
  readonly problem: Problem;
}

/** All that the page shows. `text` is the case file, sign for sign; `read` is what core made of it. */
export interface Desk {
  readonly text: string;
  readonly savedText: string;
  readonly fileName: string;
  readonly read: Accepted;
  readonly horse: number;
  readonly station: Station;
  readonly changeMm: number;
  readonly refused: ReadonlyMap<string, Refused>;
  readonly answer: Answer | undefined;
  /** True while draws are still being added. */
  readonly answering: boolean;
  /** Heads solved so far for this text and horse, by change of spread; undefined where no head was read. */
  readonly sweep: ReadonlyMap<number, SweepPoint | undefined>;
  /** What a worker said instead of an answer. */
  readonly failed: string | undefined;
}

/** What stands at a place of the file as it was typed. */
export const typedAt = (desk: Desk, path: string): unknown => valueAt(desk.read.file, stepsOf(path));

/** Holds one value that changes, and tells who listens. */
export class Held<Value> {
  #value: Value;
  #listeners = new Set<() => void>();
  constructor(value: Value) {
    this.#value = value;
  }
  readonly get = (): Value => this.#value;
  readonly listen = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };
  change(part: Partial<Value>): void {
    this.#value = { ...this.#value, ...part };
    for (const listener of this.#listeners) listener();
  }
}
