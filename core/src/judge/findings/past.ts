import type { SurveyedSaddle } from "../../survey/case.ts";
import { anyOf, valueOf } from "./answered.ts";
import type { SoundnessFindings } from "./orders.ts";

/** Age up to which a clean tree may be inferred sound under its cover (a bench rule; common practice, no source). */
export const YOUNG_YEARS = 5;

/** Each incident asked by itself; "no" counts only from an owner since new. */
export function trauma(saddle: SurveyedSaddle): SoundnessFindings["trauma"] {
  const answer = anyOf(Object.values(saddle.past.incidents));
  return answer === "no" && saddle.past.ownedSinceNew !== "yes" ? "not-known" : answer;
}

/** What was done to the head before. Exchanges leave the tree as it was and do not count. */
export function past(saddle: SurveyedSaddle): SoundnessFindings["past"] {
  const { alterationsKnown, alterations, repaired, heatedBefore, storedDamp, storedHot } = saddle.past;
  const heated = heatedBefore === "yes" || alterations.some((one) => one.way === "heat");
  // Polymer remembers a hot car as it does a lamp; in wood it is the glue line that is in doubt (parts.ts).
  const baked = storedHot === "yes" && saddle.build.arch !== "wood";
  if (repaired === "yes" || heated || baked) return "repaired-or-heated";
  const bent = alterations.filter((one) => one.way !== "exchange");
  const told =
    alterationsKnown === "listed"
      ? alterations.length > 0
      : alterationsKnown === "none" && alterations.length === 0;
  const handsKnown = bent.every((one) => one.knownHand === "yes" && one.way === "press");
  if (repaired !== "no" || storedDamp !== "no" || storedHot !== "no" || !told || !handsKnown)
    return "not-known";
  return bent.length > 1 ? "several-known" : "clean";
}

export function age(saddle: SurveyedSaddle): SoundnessFindings["age"] {
  const years = valueOf(saddle.past.age);
  if (years === undefined) return "not-known";
  return years <= YOUNG_YEARS ? "to-5-years" : "older";
}
