import { ACTS, type SaddleAnswer } from "../../terms/answers.ts";
import type { SoundnessFindings } from "../findings/orders.ts";
import { ALL_BUT_STRIP, type Bar, PRESSES } from "./gate.ts";

type F = SoundnessFindings;

/** Seen bare and found sound; anything less leaves the tree as doubtful as under its cover. */
export const seenBare = (f: F): boolean =>
  f.level === "bare" && f.riderPart === "sound" && f.otherPart === "sound";
const isRecord = (f: F): boolean => f.serial === "of-record";
const traumaNotKnown = (f: F): boolean => f.trauma === "not-known" || (f.trauma === "no" && !isRecord(f));
const pastNotClean = (f: F): boolean => f.past !== "clean" || !isRecord(f);
const notRidden = (f: F): boolean => f.riderPart === "doubtful" || (f.trauma === "yes" && !seenBare(f));
const notLooked = (f: F): boolean =>
  f.level === "not-looked" || f.riderPart === "not-looked" || f.otherPart === "not-looked";

/** Gate 2: soundness, by levels of seeing. */
export const SOUNDNESS_BARS: readonly Bar<F>[] = [
  {
    rule: "saddle-cracked",
    when: (f) => f.riderPart === "failed-structure",
    shuts: ACTS,
    leadsTo: "other-saddle",
  },
  {
    rule: "saddle-part-failed",
    when: (f) => f.riderPart === "failed-renewable" || f.otherPart === "failed",
    shuts: ALL_BUT_STRIP,
    leadsTo: "colleague",
  },
  {
    rule: "saddle-rider-part-doubtful",
    when: (f) => f.riderPart === "doubtful",
    shuts: ALL_BUT_STRIP,
    leadsTo: "strip-first",
  },
  {
    rule: "saddle-incident",
    when: (f) => f.trauma === "yes" && !seenBare(f),
    shuts: ALL_BUT_STRIP,
    leadsTo: "strip-first",
  },
  { rule: "saddle-not-looked", when: notLooked, shuts: ALL_BUT_STRIP, leadsTo: "measure-more" },
  // Before the doubt that a strip clears up: no look at the bare tree makes a repaired or baked head one for a press.
  { rule: "saddle-repaired", when: (f) => f.past === "repaired-or-heated", shuts: PRESSES, leadsTo: "maker" },
  {
    rule: "saddle-other-part-doubtful",
    when: (f) => f.otherPart === "doubtful",
    shuts: ["exchange", ...PRESSES],
    leadsTo: "strip-first",
  },
  {
    rule: "saddle-incident-bare",
    when: (f) => f.trauma === "yes" && seenBare(f),
    shuts: PRESSES,
    leadsTo: "other-saddle",
  },
  {
    rule: "saddle-twisted",
    when: (f) => f.square === "off" && seenBare(f),
    shuts: ["exchange", ...PRESSES],
    leadsTo: "maker",
  },
  {
    rule: "saddle-twisted",
    when: (f) => f.square === "off" && !seenBare(f),
    shuts: ["exchange", ...PRESSES],
    leadsTo: "strip-first",
  },
  {
    rule: "saddle-square-not-measured",
    when: (f) => f.square === "not-measured",
    shuts: PRESSES,
    leadsTo: "measure-more",
  },
  { rule: "saddle-not-bare", when: (f) => !seenBare(f), shuts: ["press-bare"], leadsTo: "strip-first" },
  {
    rule: "saddle-incident-not-known",
    when: (f) => traumaNotKnown(f) && !seenBare(f),
    shuts: ["press-dressed"],
    leadsTo: "strip-first",
  },
  {
    rule: "saddle-past-not-clean",
    when: (f) => pastNotClean(f) && !seenBare(f),
    shuts: ["press-dressed"],
    leadsTo: "strip-first",
  },
  {
    rule: "saddle-old",
    when: (f) => f.age !== "to-5-years" && !seenBare(f),
    shuts: ["press-dressed"],
    leadsTo: "strip-first",
  },
];

export function saddleAnswer(f: F): SaddleAnswer {
  if (f.riderPart === "failed-structure") return "out-for-good";
  if (f.riderPart === "failed-renewable" || f.otherPart === "failed") return "out-till-repaired";
  if (notRidden(f)) return "strip-before-riding";
  if (notLooked(f)) return "not-looked";
  if (f.square === "off" || f.otherPart === "doubtful") return "strip-before-altering";
  if (seenBare(f)) return "sound-bare";
  return traumaNotKnown(f) || pastNotClean(f) ? "strip-before-altering" : "sound-dressed";
}
