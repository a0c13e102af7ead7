import { answeredHorse, answeredSaddle, answeredWork } from "./answered.ts";
import { becauseOf } from "./because.ts";
import type { Findings } from "./findings/orders.ts";
import { findingsOf } from "./findings.ts";
import { type Gated, passGates } from "./gates.ts";
import type { CaseToJudge } from "./input.ts";
import type { Answers, JudgedLimit } from "./judgement.ts";
import type { Choice } from "./remedy/choice.ts";
import { choose } from "./remedy/choose.ts";
import { gather } from "./remedy/gather.ts";
import type { Judged } from "./remedy/judged.ts";
import { whyNoSetBack } from "./remedy/set-back.ts";
import { type Decided, throughGates } from "./remedy/through-gates.ts";

/** What the road needs besides the answers: which readings decide, to look for the next one. */
export interface JudgedCase {
  readonly answers: Answers;
  /** Paths of the readings that the work answer waits for; empty unless it is "measure-more". */
  readonly waitsFor: readonly string[];
  /** Ids of the cautions in the answers, stop signs first. */
  readonly cautionIds: readonly string[];
  readonly gated: Gated;
}

const WITHOUT_FIT: Choice = { wish: "not-now", rules: [], also: [] };

const shown = ({ rule, at, value, u, outcome, missing }: Judged): JudgedLimit => ({
  rule,
  at,
  value,
  u,
  outcome,
  missing,
});

/**
 * The three answers for one horse of a case. `next` is left undefined: `nextReading` finds it, since that
 * takes answering again. Throws only where an index or a rule's id is not there.
 */
export function judgeCase(input: CaseToJudge): JudgedCase {
  const { survey, horseIndex } = input;
  const findings: Findings = findingsOf(survey, horseIndex);
  const gated = passGates(findings);
  const known = gated.flagged ? undefined : gather(input);
  const choice = known === undefined ? WITHOUT_FIT : choose(known);
  const decided: Decided = throughGates(gated, findings, choice);
  const horse = answeredHorse(gated, findings, horseIndex);
  const saddle = answeredSaddle(gated, findings, horseIndex);
  const work = answeredWork(decided, choice, known?.today ?? [], input, gated);
  // A saddle that is evidence is left alone, and a broken tree is not ridden again: no other head is held up beside them.
  const isPastHead = decided.id === "leave-as-found" || gated.saddle === "out-for-good";
  const showsHead = gated.horse !== "not-examined" && !isPastHead;
  const noSetBack = known && whyNoSetBack(known, choice.setting?.setting);
  return {
    answers: {
      horse: horse.answered,
      saddle: saddle.answered,
      work: work.answered,
      setBack: showsHead && noSetBack !== undefined ? becauseOf(noSetBack, horseIndex) : undefined,
      permitted: gated.permitted,
      limitsToday: (known?.today ?? []).map(shown),
      setting: showsHead ? choice.setting?.setting : undefined,
      limitsAfter: showsHead ? (choice.limitsAfter ?? []).map(shown) : [],
      next: undefined,
    },
    waitsFor: work.waitsFor,
    cautionIds: [...new Set([...horse.cautions, ...saddle.cautions, ...work.cautions])],
    gated,
  };
}
