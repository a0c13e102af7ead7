import type { Machine } from "../practice/machine.ts";
import { jsonIn } from "../practice/noted.ts";
import type { Store } from "../records.ts";
import { placeName } from "./places.ts";

const KINDS = [
  "opened",
  "went to",
  "began",
  "entered",
  "refused",
  "cleared",
  "took back",
  "copied",
  "brought in",
  "erased",
  "not kept",
  "fault",
] as const;
export type Did = (typeof KINDS)[number];

/** One thing that was done: what kind of thing, where, and in which whole minute since 1970. No value and nobody's name. */
export interface Action {
  readonly did: Did;
  readonly place: string;
  readonly minute: number;
}

/** So many are kept. Working number, no source: about one visit's. */
export const ACTIONS_MOST = 200;
const NOTE = "last-actions";
const MINUTE_MS = 60_000;

/**
 * The last things that were done here, in memory and in the store's notes, so that they are still there after a crash. Two tabs
 * keep one list each, and the one that wrote last is found again.
 */
export class Actions {
  private writing = false;
  private isNew = false;

  private constructor(
    private readonly store: Store,
    private readonly machine: Machine,
    private all: readonly Action[],
  ) {}

  static async open(store: Store, machine: Machine): Promise<Actions> {
    const noted = jsonIn(await store.noted(NOTE));
    return new Actions(store, machine, Array.isArray(noted) ? noted.flatMap(actionOf) : []);
  }

  list(): readonly Action[] {
    return this.all;
  }

  add(did: Did, place: string): void {
    const minute = Math.floor(this.machine.now() / MINUTE_MS);
    this.all = [...this.all, { did, place: placeName(place), minute }].slice(-ACTIONS_MOST);
    this.isNew = true;
    void this.write();
  }

  /** One write at a time; what was done meanwhile goes into the next. */
  private async write(): Promise<void> {
    if (this.writing) return;
    this.writing = true;
    while (this.isNew) {
      this.isNew = false;
      // Where the store is full or closed the list lives in memory alone: the reading itself tells of the trouble.
      await this.store.note(NOTE, JSON.stringify(this.all)).catch(() => undefined);
    }
    this.writing = false;
  }
}

/** What was noted, looked at again: a note that another version wrote, or somebody by hand, brings nothing in but kinds and places. */
function actionOf(noted: unknown): Action[] {
  if (typeof noted !== "object" || noted === null) return [];
  const { did, place, minute } = noted as { did?: unknown; place?: unknown; minute?: unknown };
  const kind = KINDS.find((one) => one === did);
  if (!kind || typeof place !== "string" || !Number.isInteger(minute)) return [];
  return [{ did: kind, place: placeName(place), minute: Number(minute) }];
}
