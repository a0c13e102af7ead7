import type { RefusalReason } from "../engine/contact/problem.ts";
import type { Setting } from "../reach/setting.ts";
import type { Survey } from "../survey/case.ts";
import type { BySide, Side, Station } from "../terms/places.ts";

/**
 * One figure to hold against one limit rule; measured off the survey by `measureLimits` or computed elsewhere.
 * Units are the rule's own (mm or degrees, never radians).
 */
export interface MeasuredLimit {
  /** Id of the `LimitRule`; the ids are the keys of `LIMITS` in `limits/all.ts`. */
  readonly rule: string;
  /**
   * Where, in words: "front, near", "girthed, off", "rear"; empty when the rule says it. A figure that comes of a
   * template offered up ends with the word "template": for a press it counts where two angles subtracted do not.
   */
  readonly at: string;
  readonly value: number | undefined;
  /** Half of the central 95 % of the draws; 0 or more. Undefined when the value is. */
  readonly u: number | undefined;
  /** Paths of the readings that are missing; empty when the value is there. */
  readonly missing: readonly string[];
  readonly station?: Station | undefined;
  readonly side?: Side | undefined;
  /** Which trace it was computed on. A cold trace may lie between where a warm one is inside. */
  readonly temper?: "cold" | "warm" | undefined;
}

/** One thing the head can become, with the whole it makes for this horse and for the others that wear it. */
export interface Candidate {
  /**
   * `changeMm` of the spread inside the tips against today. `shutBy`: empty when material and history allow it.
   * A reason that is a cap of material or history (from as made, path, reversals) begins with "cap-";
   * any other reason (no such plate at hand, not calculated for this construction) does not.
   * Settings nobody can make today still belong in the list, up to 20 mm either way: they tell "another saddle"
   * (no head serves) from "this one, by other hands".
   */
  readonly setting: Setting;
  /** All limits after the change; those the change does not move may be left out: today's then stand. */
  readonly after: readonly MeasuredLimit[];
  /** Each other horse of this saddle, by its index in the case; leave out those that cannot be calculated. */
  readonly others: readonly { readonly horseIndex: number; readonly after: readonly MeasuredLimit[] }[];
}

/**
 * Everything `judgeCase` needs. On a horse flag (`horseShutsFit` in `horse-flag.ts`: ask it first) no setting, pressure or
 * fit is computed or shown, and the lists stay empty.
 */
export interface CaseToJudge {
  readonly survey: Survey;
  /** The horse that is answered for. */
  readonly horseIndex: number;
  /** Limits that had to be computed (face angles, spread against the wanted head, horse's sides); the direct ones are added here. */
  readonly computedToday: readonly MeasuredLimit[];
  readonly candidates: readonly Candidate[];
  /** The larger side at the front station, from the traces; undefined when even or not known. */
  readonly largerSide: Side | undefined;
  /** Panel fill at its thickest that each side needs with today's head, mm; undefined when it cannot be told. */
  readonly fillMm: BySide<number | undefined>;
  /** Why today's saddle was not brought to rest in the calculation; undefined where it rests, and where that was not tried. */
  readonly notAtRest: RefusalReason | undefined;
  /** Readings that the fit needs and that are missing, as paths in the case. Empty when the fit could be calculated. */
  readonly lacking: readonly string[];
}
