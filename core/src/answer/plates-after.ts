import type { CaseToJudge } from "../judge/input.ts";
import type { Answers, JudgedLimit } from "../judge/judgement.ts";
import { faultsOf } from "../judge/remedy/faults.ts";
import { gather } from "../judge/remedy/gather.ts";
import { headKind } from "../reach/build.ts";
import type { Survey } from "../survey/case.ts";
import { type PlatesSeen, platesSeen } from "./plates.ts";

/** What a plate at hand would leave wrong with the whole, worst first; and the other horses that it would put outside. */
export interface PlateAfter {
  /** Index into the plates at hand. */
  readonly plate: number;
  readonly faults: readonly Pick<JudgedLimit, "rule" | "at" | "outcome">[];
  readonly harms: readonly number[];
}

/** Plates at hand beside the three answers: their order by the head, and what the whole makes of each. */
export interface PlatesAnswered {
  readonly seen: PlatesSeen;
  readonly after: readonly PlateAfter[];
  /** Index of the plate that the answer names. */
  readonly chosen: number | undefined;
  /** What each plate at hand is called, by its index, and the horses of the case. */
  readonly called: Survey["platesAtHand"];
  readonly horses: readonly string[];
}

/** Answers that a plate at hand carries out. */
const BY_PLATE: readonly string[] = ["change-plate", "set-back"];

/** Undefined where the head takes no plates, none is at hand, or this horse is not judged. */
export function platesAnswered(
  input: CaseToJudge,
  { work, setting }: Answers,
  seed: number,
): PlatesAnswered | undefined {
  const { survey, horseIndex } = input;
  if (input.candidates.length === 0 || headKind(survey.saddle.build) !== "plate-exchanged") return undefined;
  const seen = survey.platesAtHand.length === 0 ? undefined : platesSeen(survey, [], seed);
  if (seen === undefined || !seen.horses.some((one) => one.horseIndex === horseIndex)) return undefined;
  const after = gather(input).tried.flatMap(({ candidate, limits, harms }): readonly PlateAfter[] => {
    const { plate } = candidate.setting;
    if (plate === undefined) return [];
    const faults = faultsOf(limits, "inside").map(({ rule, at, outcome }) => ({ rule, at, outcome }));
    return [{ plate, faults: [...faults].sort((a, b) => rankOf(a) - rankOf(b)), harms }];
  });
  return {
    seen,
    after,
    chosen: BY_PLATE.includes(work.id) ? setting?.plate : undefined,
    called: survey.platesAtHand,
    horses: survey.horses.map(({ name }) => name),
  };
}

const rankOf = ({ outcome }: Pick<JudgedLimit, "outcome">): number => (outcome === "outside" ? 0 : 1);
