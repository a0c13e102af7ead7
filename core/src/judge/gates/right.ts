import { ACTS } from "../../terms/answers.ts";
import type { RightFindings } from "../findings/orders.ts";
import { type Bar, CHANGES, PRESSES } from "./gate.ts";

/** Gate 1: identity and right. Evidence is not touched, and not worn either. */
export const RIGHT_BARS: readonly Bar<RightFindings>[] = [
  { rule: "right-claim", when: (f) => f.claim === "yes", shuts: ACTS, leadsTo: "leave-as-found" },
  {
    rule: "right-consent-refused",
    when: (f) => f.consent === "no",
    shuts: CHANGES,
    leadsTo: "leave-as-found",
  },
  {
    rule: "right-claim-not-asked",
    when: (f) => f.claim === "not-known",
    shuts: CHANGES,
    leadsTo: "measure-more",
  },
  {
    rule: "right-consent-not-asked",
    when: (f) => f.consent === "not-known",
    shuts: CHANGES,
    leadsTo: "measure-more",
  },
  {
    rule: "right-other-horses",
    when: (f) => f.otherHorses === "not-covered",
    shuts: PRESSES,
    leadsTo: "measure-more",
  },
];
