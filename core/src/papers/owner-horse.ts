import type { Answer } from "../answer/result.ts";
import { takeTransponder, transponderShown } from "../survey/transponder.ts";
import { uelnShown } from "../survey/ueln.ts";
import { ownerReason } from "./owner-reasons.ts";

/** What an owner is told of the horse besides the answer: by which numbers it goes, what it carries, its condition. */
export function ofTheHorse({ identity, body, answers }: Answer): readonly string[] {
  const told = answers.work.because.some(({ rule }) => rule === "fit-rider-heavy");
  // What is said of the load is advice on riding: where the vet comes first, or nobody rides in this saddle, it would read as leave.
  const waits = answers.horse.id.startsWith("vet-") || !answers.permitted.includes("ride");
  const isLeftOut = told || waits;
  const rules = (body?.because ?? []).filter(({ rule }) => !(isLeftOut && rule.startsWith("load-")));
  return [...numbers(identity), ...rules.map(({ rule, says }) => ownerReason(rule) ?? says)];
}

function numbers({ transponder, ueln }: Answer["identity"]): readonly string[] {
  const chip = takeTransponder(transponder);
  return [
    ...(chip.ok ? [`This letter is about HORSE with the chip ${transponderShown(chip.transponder)}.`] : []),
    ...(ueln === "" ? [] : [`Its number for life is ${uelnShown(ueln)}.`]),
  ];
}
