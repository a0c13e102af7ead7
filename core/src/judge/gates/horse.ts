import type { HorseAnswer } from "../../terms/answers.ts";
import type { HorseFindings } from "../findings/orders.ts";
import { ALL_BUT_STRIP, type Bar, PRESSES, WORK } from "./gate.ts";

type Horse = Bar<HorseFindings>;
const rides = (rule: string, when: Horse["when"]): Horse => ({
  rule,
  when,
  shuts: ALL_BUT_STRIP,
  leadsTo: "not-now",
});
const works = (rule: string, when: Horse["when"]): Horse => ({ rule, when, shuts: WORK, leadsTo: "not-now" });
const unseen = (rule: string, when: Horse["when"]): Horse => ({
  rule,
  when,
  shuts: ALL_BUT_STRIP,
  leadsTo: "measure-more",
});

/** Gate 0. On a flag nothing is done for the horse, flocking too; the saddle may still be stripped to be looked at. */
export const HORSE_BARS: readonly Horse[] = [
  rides("horse-lame", (f) => f.lame === "yes"),
  rides("horse-nerves", (f) => f.nerves === "yes"),
  rides("horse-lesion", (f) => f.lesion === "yes"),
  rides("horse-pain-strong", (f) => f.pain === "strong"),
  works("horse-pain-clear", (f) => f.pain === "clear-or-several"),
  works("horse-other-sign", (f) => f.otherSign === "yes"),
  works("horse-pain-mild", (f) => f.pain === "mild-at-one-place"),
  unseen("horse-not-touched", (f) => f.hands === "not-all-zones"),
  unseen("horse-not-trotted", (f) => f.lame === "not-known" || f.nerves === "not-known"),
  unseen("horse-not-asked", (f) => f.lesion === "not-known"),
  { rule: "horse-not-asked", when: (f) => f.otherSign === "not-known", shuts: WORK, leadsTo: "measure-more" },
  { rule: "horse-off-work", when: (f) => f.workingShape === "off-work", shuts: PRESSES, leadsTo: "not-now" },
  {
    rule: "horse-work-not-known",
    when: (f) => f.workingShape === "not-known",
    shuts: PRESSES,
    leadsTo: "measure-more",
  },
  { rule: "horse-changing", when: (f) => f.shape === "changing", shuts: PRESSES, leadsTo: "not-now" },
  {
    rule: "horse-shape-not-known",
    when: (f) => f.shape === "not-known",
    shuts: PRESSES,
    leadsTo: "measure-more",
  },
];

export function horseAnswer(f: HorseFindings): HorseAnswer {
  if (f.lame === "yes" || f.nerves === "yes" || f.lesion === "yes" || f.pain === "strong")
    return "vet-before-riding";
  if (f.pain === "clear-or-several" || f.otherSign === "yes") return "vet-before-altering";
  const unknown = [f.lame, f.nerves, f.lesion, f.otherSign].includes("not-known");
  if (unknown || f.hands === "not-all-zones") return "not-examined";
  const later = f.pain === "mild-at-one-place" || f.workingShape === "off-work" || f.shape === "changing";
  return later ? "come-back" : "no-reason-seen";
}

/** A flag on the horse: no setting, pressure or fit is computed or shown. A back out of work, or one that is changing, is not a flag. */
export function isFlagged(f: HorseFindings): boolean {
  const answer = horseAnswer(f);
  return answer === "vet-before-riding" || answer === "vet-before-altering" || f.pain !== "none";
}
