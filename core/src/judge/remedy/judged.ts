import type { Outcome } from "../../terms/answers.ts";
import type { MeasuredLimit } from "../input.ts";

/** A figure, judged. `slack`: on the smaller side, where the tree lies off and fill is the cure. */
export interface Judged extends MeasuredLimit {
  readonly outcome: Outcome;
  readonly slack: boolean;
}

/** What is taken of a limit that cannot be told, to see whether it matters. */
export type Assume = "inside" | "between" | "outside";
