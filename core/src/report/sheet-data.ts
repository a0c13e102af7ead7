import type { At } from "../engine/drawing.ts";
import type { PressureField } from "../fit/fit.ts";
import type { Outcome } from "../terms/answers.ts";
import type { BySide, Station } from "../terms/places.ts";
import type { Figure, Unit } from "./figures.ts";
import type { GaitSheet } from "./gait-data.ts";
import type { PanelSheet } from "./panel-data.ts";
import type { SheetFacts } from "./sheet-facts.ts";
import type { SheetPlates } from "./sheet-plates.ts";
import type { PressSheet } from "./sheet-press.ts";
import type { WholeTreeSheet } from "./sheet-whole-tree.ts";

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

/** A limit that is not inside today or after the change, in full. */
export interface LimitRow {
  /** The limit by its short name, with its place and its inside ("clearance, girthed: from 45 mm"). */
  readonly rule: string;
  readonly unit: Unit;
  readonly today: Judged;
  readonly after: Judged | undefined;
}

/** A limit that is inside today and after the change; its sides, or its stations, together in their order. */
export interface InsideRow {
  readonly name: string;
  readonly unit: Unit;
  readonly figures: readonly Figure[];
}

export interface SheetLimits {
  readonly open: readonly LimitRow[];
  readonly inside: readonly InsideRow[];
  /** Names of what was not read, near and off of one place under one name. */
  readonly notRead: readonly string[];
  /** How many limits these are. */
  readonly notReadCount: number;
}

/** How the saddle comes to rest in the calculation, and what the calculation stands on. */
export interface RestWords {
  readonly says: readonly string[];
  /** One assumption each, with its range. */
  readonly assumed: readonly string[];
  /** Engine, draws and seed. */
  readonly made: string;
}

/** One cut across the horse and the tree over it: [y to the off side, z up], mm, in the back's place, seen from behind. */
export interface SectionDrawing {
  readonly station: Station;
  readonly back: readonly At[];
  readonly today: BySide<readonly At[]>;
  readonly chosen: BySide<readonly At[]> | undefined;
  /** The head's outline at the front, closed, today and at the chosen setting, and how high it stands in words; undefined where that is not known. */
  readonly head:
    | { readonly today: readonly At[]; readonly chosen: readonly At[] | undefined; readonly stands: string }
    | undefined;
  /** The spread inside the tips of the head drawn whole, and where these tips lie; drawn as a dimension. */
  readonly spread: { readonly figure: Figure; readonly tips: BySide<At> } | undefined;
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
  readonly limits: SheetLimits;
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
  readonly rest: RestWords;
  /** The whole tree that the chosen setting makes; undefined where nothing is changed. */
  readonly wholeTree?: WholeTreeSheet | undefined;
  /** For the bench: what a press does to the head; undefined where none is pressed. */
  readonly press?: PressSheet | undefined;
  /** Undefined where nothing rests. */
  readonly gaits: GaitSheet | undefined;
  /** Plates at hand in their order; no rows where the head takes none. */
  readonly plates: SheetPlates;
  /** The panel's wedges and what is done to it; undefined where its bearing was not read. */
  readonly panel: PanelSheet | undefined;
  /** The horse by its numbers, its mass and what it carries, in sentences; empty where nothing was read. */
  readonly known: readonly string[];
}
