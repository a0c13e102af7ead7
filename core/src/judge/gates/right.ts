import { ACTS } from "../../terms/answers.ts";
import type { RightFindings } from "../findings/orders.ts";
import { type Bar, CHANGES, PRESSES } from "./gate.ts";

/** Gate 1: identity and right. Evidence is not touched, and not worn either. */
export const RIGHT_BARS: readonly Bar<RightFindings>[] = [
  { rule: "right-claim", when: (f) => f.claim === "yes", shuts: ACTS, then: "leave-as-found" },
  { rule: "right-consent-refused", when: (f) => f.consent === "no", shuts: CHANGES, then: "leave-as-found" },
  { rule: "right-claim-not-asked", when: (f) => f.claim === "not-known", shuts: CHANGES, then: "measure-more" },
  { rule: "right-consent-not-asked", when: (f) => f.consent === "not-known", shuts: CHANGES, then: "measure-more" },
  { rule: "right-other-horses", when: (f) => f.otherHorses === "not-covered", shuts: PRESSES, then: "measure-more" },
];
