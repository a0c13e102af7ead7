import type { HorseAnswer, SaddleAnswer } from "../terms/answers.ts";
import { reasons } from "./because.ts";
import type { Findings } from "./findings/orders.ts";
import { passGates } from "./gates.ts";
import type { Because } from "./judgement.ts";
import { atHome } from "./owner/at-home.ts";
import { ownerFindings } from "./owner/findings.ts";
import type { OwnerQuestion } from "./owner/question.ts";
import { type See, whoFor } from "./owner/who-for.ts";
import { ownerHorseSays, ownerSaddleSays } from "./owner/words.ts";
import { CAUTIONS, type CautionId, cautionSays, HORSE_CAUTIONS, SADDLE_CAUTIONS } from "./words/cautions.ts";

/** What an owner is told: never a promise, a press or heat figure, or "change the plate". */
export interface OwnerAnswer {
  readonly horse: HorseAnswer;
  readonly saddle: SaddleAnswer;
  /** The two answers in words that never read as if somebody had looked. */
  readonly says: { readonly horse: readonly string[]; readonly saddle: readonly string[] };
  /** Stop signs, before every other line; with one of them there is nothing to do at home. */
  readonly stops: readonly string[];
  /** What may be done at home, one sentence each. */
  readonly atHome: readonly string[];
  /** Whom to see, for what, in the order in which to see them. */
  readonly see: See;
  readonly because: readonly Because[];
}

/** Answers the owner's question through the same gates as a fitter's. */
export function answerOwner(question: OwnerQuestion): OwnerAnswer {
  const findings = ownerFindings(question);
  const gated = passGates(findings);
  const evidence: readonly CautionId[] = findings.right.claim === "yes" ? ["stop-evidence"] : [];
  const ids = [...HORSE_CAUTIONS[gated.horse], ...SADDLE_CAUTIONS[gated.saddle], ...evidence];
  const stops = CAUTIONS.filter((one) => one.stop && ids.includes(one.id)).map((one) => cautionSays(one.id));
  const isFlag = gated.flagged || stops.length > 0;
  return {
    horse: gated.horse,
    saddle: gated.saddle,
    says: { horse: ownerHorseSays(gated.horse), saddle: ownerSaddleSays(gated.saddle) },
    stops,
    atHome: isFlag ? [] : atHome(question, gated),
    see: whoFor(findings, gated),
    because: reasons(
      [
        ...gated.passed.horse.rules,
        ...gated.passed.right.rules,
        ...saddleRules(gated.passed.soundness.rules, findings.soundness.trauma),
      ],
      0,
    ),
  };
}

/** Rules that only say what a bench would still want are left out: an owner has no bench. */
const BENCH: readonly string[] = [
  "saddle-not-bare",
  "saddle-square-not-measured",
  "saddle-past-not-clean",
  "saddle-old",
];
/** Where every accident was denied, what leaves the past open is the serial that nobody read. */
const saddleRules = (rules: readonly string[], trauma: Findings["soundness"]["trauma"]): readonly string[] =>
  rules
    .filter((rule) => !BENCH.includes(rule))
    .map((rule) => (rule === "saddle-incident-not-known" && trauma === "no" ? "saddle-identity" : rule));
