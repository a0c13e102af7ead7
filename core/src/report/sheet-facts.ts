import type { BackLine } from "./back-line.ts";

/** What every sheet says of itself. */
export interface SheetFacts {
  readonly caseTitle: string;
  readonly horse: string;
  readonly saddle: string;
  /** yyyy-mm-dd of the visit. */
  readonly date: string;
  /** Who measured and drew. */
  readonly hand: string;
  readonly engineVersion: string;
  /** Hash of all readings that were calculated from; the first twelve signs are printed. */
  readonly inputHash: string;
  /** An invented example: every sheet says so in large type. */
  readonly invented: boolean;
  readonly cautions: readonly string[];
  /** Stop signs in words, outranking every other line; empty when there are none. */
  readonly stop: readonly string[];
  readonly back: BackLine;
}
