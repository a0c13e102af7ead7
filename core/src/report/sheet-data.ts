import type { At } from "../engine/drawing.ts";
import type { PressureField } from "../fit/fit.ts";
import type { Outcome } from "../terms/answers.ts";
import type { BySide, Station } from "../terms/places.ts";
import type { Figure, Unit } from "./figures.ts";
import type { SheetFacts } from "./sheet-facts.ts";

/** One of the three answers in words. */
export interface AnswerWords {
  readonly says: string;
  readonly because: readonly { readonly says: string; readonly source: string }[];
  readonly nextStep: string;
  readonly who: string;
}

/** How one limit came out; `not-read` where there is nothing to judge. */
export interface Judged {
  readonly figure: Figure | undefined;
  readonly outcome: Outcome | "not-read";
}

export interface LimitRow {
  /** The rule in words, with its inside ("clearance over the withers, girthed: from 45 mm"). */
  readonly rule: string;
  readonly unit: Unit;
  readonly today: Judged;
  readonly after: Judged | undefined;
}

/** One cut across the horse and the tree over it: [y to the off side, z up], mm, in the back's place, seen from behind. */
export interface SectionDrawing {
  readonly station: Station;
  readonly back: readonly At[];
  readonly today: BySide<readonly At[]>;
  readonly chosen: BySide<readonly At[]> | undefined;
  /** Distance between the outer ends of the tree drawn whole, mm; drawn as a dimension where both are on the sheet. */
  readonly spread: Figure | undefined;
  /** Tree's face less back's face, degrees, at the setting drawn whole; positive where the tree is steeper. */
  readonly misfit: BySide<Figure | undefined>;
}

export interface PressureMap {
  /** "today", "plate of 230 mm": which setting it is of. */
  readonly of: string;
  /** Cell (i, j) of a side lies at i * nv + j, i along the back; the near side's cells come first. */
  readonly field: PressureField;
}

/** What follows from the change, one quantity a row. */
export interface Following {
  readonly what: string;
  readonly unit: Unit;
  readonly today: Figure | undefined;
  readonly after: Figure | undefined;
}

/** The fitter's working sheet. Everything in it is worked out and worded elsewhere. */
export interface SheetData {
  readonly facts: SheetFacts;
  readonly horse: AnswerWords;
  readonly saddle: AnswerWords;
  readonly work: AnswerWords;
  /** What is said beside the work answer, in words. */
  readonly also: readonly string[];
  readonly limits: readonly LimitRow[];
  /** Front, mid, rear, as far as they were read; empty on a flag, when no fit is shown. */
  readonly sections: readonly SectionDrawing[];
  /** Today's map and the chosen setting's; empty where there is none. */
  readonly pressure: readonly PressureMap[];
  /** Mean pressure that closes a gate, kPa; areas over it are crossed. */
  readonly pressureLimitKPa: number;
  readonly follows: readonly Following[];
  /** The one reading that would settle what cannot be told. */
  readonly next: string | undefined;
  readonly missing: readonly string[];
}
