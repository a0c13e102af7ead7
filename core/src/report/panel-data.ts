import type { BySide, ByStation } from "../terms/places.ts";
import type { Figure } from "./figures.ts";

/** What is added at the three places across a panel, mm; taken out is negative. */
export interface FillAcross {
  readonly inner: number;
  readonly middle: number;
  readonly outer: number;
}

/** One row of the panel's evenness: before and after the fill. */
export interface EvennessRow {
  readonly what: string;
  readonly unit: "mm" | "deg" | "%";
  readonly before: Figure;
  readonly after: Figure;
}

/** The panel for the fitter's sheet: its wedges, and what is done to it. */
export interface PanelSheet {
  /** Each station with its two sides, in words: what is bare face, what is panel. */
  readonly wedges: readonly string[];
  /** The map over the bench; undefined where nothing is added or taken. */
  readonly fill: BySide<ByStation<FillAcross>> | undefined;
  /** What comes first, what to heed, when it is looked at again. */
  readonly says: readonly string[];
  readonly rows: readonly EvennessRow[];
}
