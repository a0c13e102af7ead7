import type { Setting } from "../reach/setting.ts";
import type { Act, HorseAnswer, Outcome, SaddleAnswer, WorkAnswer } from "../terms/answers.ts";
import type { Provenance } from "../terms/provenance.ts";

export type { Provenance };

/** One limit. `inside` and `outside` in `unit`; a value beyond either end of `outside` is outside. */
export interface LimitRule {
  readonly id: string;
  readonly quantity: string;
  readonly state: string;
  readonly unit: "mm" | "deg" | "%" | "kPa" | "cm2";
  readonly inside: readonly [number, number];
  readonly outside: readonly [number, number];
  readonly cost: "press" | "exchange" | "leave" | "withdraw";
  readonly provenance: Provenance;
  readonly sourceRef: string;
  readonly readings: readonly string[];
  /** One sentence in the trade's words. */
  readonly says: string;
}

/** A rule that is not a limit: findings to an answer. */
export interface Rule {
  readonly id: string;
  readonly says: string;
  readonly provenance: Provenance;
  readonly sourceRef: string;
  readonly readings: readonly string[];
}

export interface JudgedLimit {
  readonly rule: string;
  /** Where: station, side or state in words; empty when the rule says it. */
  readonly at: string;
  readonly value: number | undefined;
  /** Half of the central 95 % of the draws, in the rule's unit. */
  readonly u: number | undefined;
  readonly outcome: Outcome;
  readonly missing: readonly string[];
}

export interface Because {
  readonly rule: string;
  readonly says: string;
  readonly readings: readonly string[];
  readonly provenance: Provenance;
  readonly sourceRef: string;
}

export interface Answered<Id> {
  readonly id: Id;
  readonly because: readonly Because[];
  readonly cautions: readonly string[];
  readonly nextStep: string;
  readonly who: string;
}

/** The one reading that would settle what cannot be told. */
export interface NextReading {
  readonly path: string;
  readonly says: string;
  /** The work answers that its possible values would lead to. */
  readonly leadsTo: readonly WorkAnswer[];
}

export interface Answers {
  readonly horse: Answered<HorseAnswer>;
  readonly saddle: Answered<SaddleAnswer>;
  readonly work: Answered<WorkAnswer> & { readonly also: readonly WorkAnswer[] };
  /** Why an earlier change of the head is not set back; undefined where it is, and where no fit was judged. */
  readonly setBack?: Because | undefined;
  readonly permitted: readonly Act[];
  readonly limitsToday: readonly JudgedLimit[];
  readonly setting: Setting | undefined;
  readonly limitsAfter: readonly JudgedLimit[];
  readonly next: NextReading | undefined;
}
