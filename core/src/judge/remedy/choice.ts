import type { Candidate } from "../input.ts";
import type { Judged } from "./judged.ts";

/** What the fit asks for, before standing and the other gates say who may. `alter`: at the press, dressed or stripped. */
export type FitWish =
  | "nothing"
  | "set-up"
  | "panel"
  | "not-now"
  | "set-back"
  | "change-plate"
  | "change-insert"
  | "alter"
  | "other-way"
  | "spent"
  | "other-saddle"
  | "measure-more";

export interface Choice {
  readonly wish: FitWish;
  readonly rules: readonly string[];
  /** Said beside it: what else is to be done after it. */
  readonly also: readonly FitWish[];
  readonly setting?: Candidate | undefined;
  readonly limitsAfter?: readonly Judged[];
  /** Paths of the readings that decide and are missing. */
  readonly missing?: readonly string[];
}
