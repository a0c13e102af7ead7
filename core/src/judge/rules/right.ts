import { practice } from "./make.ts";

export const RIGHT_RULES = [
  practice(
    "right-claim",
    "A saddle in a claim, an enquiry or a sale dispute is left as found.",
    "saddle.standing.claimOrDispute",
  ),
  practice(
    "right-claim-not-asked",
    "Nothing on the saddle is begun before it is known whether it is in a claim or dispute.",
    "saddle.standing.claimOrDispute",
  ),
  practice(
    "right-consent-refused",
    "The legal owner has not agreed: the saddle is left as found.",
    "saddle.standing.ownerConsents",
  ),
  practice(
    "right-consent-not-asked",
    "Nothing on the saddle is begun before its legal owner agrees, for the worse case at once.",
    "saddle.standing.ownerConsents",
  ),
  practice(
    "right-other-horses",
    "A head is pressed only when every horse that wears the saddle is measured, or this one is signed for alone.",
    "saddle.standing.othersWearIt",
    "horses[].traces",
    "horses[].onlyThisHorse",
  ),
  practice(
    "right-harms-another",
    "A head is not pressed for one horse when that harms another that wears the saddle.",
    "horses[].traces",
  ),
] as const;
