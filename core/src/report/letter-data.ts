import type { SheetFacts } from "./sheet-facts.ts";

export interface Letterhead {
  readonly name: string;
  readonly address: string;
  readonly telephone: string;
  readonly mail: string;
}

/** One of the three answers in words, with the reasons that the owner is told. */
export interface Found {
  readonly says: string;
  readonly because: readonly string[];
}

/** The owner's letter: sentences chosen elsewhere, in plain words. An empty list leaves its heading out. */
export interface LetterData {
  readonly facts: SheetFacts;
  readonly practice: Letterhead;
  readonly owner: string;
  readonly asked: string;
  readonly horse: Found;
  readonly saddle: Found;
  readonly work: Found;
  readonly mayIRide: string;
  readonly willBeDone: readonly string[];
  readonly willNotBeDone: readonly string[];
  /** Clearance, balance and channel after the change, in plain mm. */
  readonly follows: readonly string[];
  readonly nextVisit: string;
  readonly whoMayDoIt: string;
  /** What this judgement cannot see. */
  readonly limits: readonly string[];
}
