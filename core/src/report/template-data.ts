import type { At } from "../engine/drawing.ts";
import type { BySide, Side } from "../terms/places.ts";
import type { Figure } from "./figures.ts";
import type { SheetFacts } from "./sheet-facts.ts";

/** A head's outline by halves, each from the crown to its tip: [y to the off side, z up], mm, seen from behind. The crown lies at y 0; wanted and today's share one frame. */
export type HeadOutline = BySide<readonly At[]>;

/** All that a template says; every figure is worked out before it comes here. */
export interface TemplateData {
  readonly facts: SheetFacts;
  /** Which face of the head the outline is of. */
  readonly face: "inside" | "outside";
  readonly wanted: HeadOutline;
  /** The same face of the head as it stands. */
  readonly today: HeadOutline | undefined;
  /** Inside or outside the tips, as `face` says, mm. */
  readonly spread: Figure;
  /** From the crown of this face to the level of the tips, mm. */
  readonly depth: Figure;
  /** What lies between the back and this line, in words with millimetres. */
  readonly allowed: string;
  /** Each half to the tree's own centre plane, degrees. */
  readonly halfAngle: BySide<Figure | undefined>;
  /** Place of the trace, in words ("front, at the tree points"). */
  readonly station: string;
  /** State of the horse when the trace was taken. */
  readonly temper: "cold" | "warm" | "not asked";
  /** The side of the back that the head is made for. */
  readonly larger: Side | "alike" | "cannot tell";
}
