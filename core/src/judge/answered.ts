import type { HorseAnswer, SaddleAnswer, WorkAnswer } from "../terms/answers.ts";
import { horseWords, saddleWords, workWords } from "./answer-words.ts";
import { reasons } from "./because.ts";
import type { Findings } from "./findings/orders.ts";
import type { Gated } from "./gates.ts";
import type { CaseToJudge } from "./input.ts";
import type { Answered } from "./judgement.ts";
import type { Choice } from "./remedy/choice.ts";
import { curable } from "./remedy/cures.ts";
import type { Judged } from "./remedy/judged.ts";
import type { Decided } from "./remedy/through-gates.ts";
import { hollowOn } from "./remedy/wasted.ts";
import { waitsFor } from "./waits-for.ts";
import { CAUTIONS, type CautionId, cautionSays, HORSE_CAUTIONS, SADDLE_CAUTIONS } from "./words/cautions.ts";
import { COME_BACK_NEXT } from "./words/horse.ts";
import { NOTHING_OVER_A_HOLLOW } from "./words/work.ts";
import { workCautions } from "./work-cautions.ts";

export interface Said<Id> {
  readonly answered: Answered<Id>;
  readonly cautions: readonly CautionId[];
}

/** Stop signs before every other line. */
const ordered = (ids: readonly CautionId[]): readonly CautionId[] =>
  CAUTIONS.map((one) => one.id).filter((id) => ids.includes(id));

const texts = (ids: readonly CautionId[]): readonly string[] => ordered(ids).map(cautionSays);

export function answeredHorse(gated: Gated, f: Findings, horseIndex: number): Said<HorseAnswer> {
  const found = gated.passed.horse.rules;
  const { nextStep, who } = horseWords(gated.horse);
  const ids: CautionId[] = [...HORSE_CAUTIONS[gated.horse]];
  const partly = gated.horse !== "not-examined" && f.horse.hands === "not-all-zones";
  const cautions = ordered(partly ? [...ids, "horse-not-looked"] : ids);
  const because = reasons(found.length === 0 ? ["horse-no-reason"] : found, horseIndex);
  const later = f.horse.pain === "none" ? found.flatMap((rule) => COME_BACK_NEXT[rule] ?? []) : [];
  const next = gated.horse === "come-back" ? (later[0] ?? nextStep) : nextStep;
  return { answered: { id: gated.horse, because, cautions: texts(cautions), nextStep: next, who }, cautions };
}

/** Rules of the soundness gate that only shut the press are said with the work, unless they make the answer. */
export function answeredSaddle(gated: Gated, f: Findings, horseIndex: number): Said<SaddleAnswer> {
  const found = gated.passed.soundness.rules.filter((rule) => rule !== "saddle-not-bare");
  const identity = f.soundness.serial === "of-record" ? [] : ["saddle-identity"];
  const nothing =
    gated.saddle === "sound-dressed" || gated.saddle === "sound-bare" ? ["saddle-nothing-found"] : [];
  const evidence: CautionId[] = f.right.claim === "yes" ? ["stop-evidence"] : [];
  const cautions = ordered([...SADDLE_CAUTIONS[gated.saddle], ...evidence]);
  const { nextStep, who } = saddleWords(gated.saddle);
  const because = reasons([...nothing, ...found, ...identity], horseIndex);
  return { answered: { id: gated.saddle, because, cautions: texts(cautions), nextStep, who }, cautions };
}

/** Limits that no saddle work cures and that are said all the same. */
const SAID: readonly string[] = ["horse-sides-angle", "horse-sides-width"];

/** What lies between or outside today; of a tree that is broken nobody asks how it fits. */
function faultsTold(today: readonly Judged[], gated: Gated): readonly string[] {
  if (gated.saddle === "out-for-good") return [];
  const told = today.filter(
    ({ rule, outcome }) =>
      (curable(rule) || SAID.includes(rule)) && (outcome === "between" || outcome === "outside"),
  );
  return told.map(({ rule }) => rule);
}

export interface SaidWork extends Said<WorkAnswer> {
  readonly answered: Answered<WorkAnswer> & { readonly also: readonly WorkAnswer[] };
  readonly waitsFor: readonly string[];
}

export function answeredWork(
  decided: Decided,
  choice: Choice,
  today: readonly Judged[],
  input: CaseToJudge,
  gated: Gated,
): SaidWork {
  const { nextStep, who } = workWords(decided.id);
  const hollow = hollowOn(today);
  const rules = [...decided.rules, ...faultsTold(today, gated)];
  const springs = input.survey.saddle.build.springs === "along-rails" && rules.includes("bridge");
  const because = reasons([...(springs ? ["fit-springs"] : []), ...rules], input.horseIndex);
  const cautions = ordered(workCautions({ decided, input, gated, hollow }));
  return {
    answered: {
      id: decided.id,
      because,
      cautions: texts(cautions),
      nextStep: hollow && decided.id === "nothing" ? NOTHING_OVER_A_HOLLOW : nextStep,
      who,
      also: decided.also,
    },
    cautions,
    waitsFor: decided.id === "measure-more" ? waitsFor(decided, choice, input, gated) : [],
  };
}
