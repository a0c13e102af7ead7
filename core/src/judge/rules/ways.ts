import { practice } from "./make.ts";

export const RIGHT_RULES = [
  practice("right-claim", "A saddle in a claim, an enquiry or a sale dispute is left as found.", "saddle.standing.claimOrDispute"),
  practice("right-claim-not-asked", "Nothing on the saddle is begun before it is known whether it is in a claim or dispute.", "saddle.standing.claimOrDispute"),
  practice("right-consent-refused", "The legal owner has not agreed: the saddle is left as found.", "saddle.standing.ownerConsents"),
  practice("right-consent-not-asked", "Nothing on the saddle is begun before its legal owner agrees, for the worse case at once.", "saddle.standing.ownerConsents"),
  practice("right-other-horses", "A head is pressed only when every horse that wears the saddle is measured, or this one is signed for alone.", "saddle.standing.othersWearIt", "horses[].traces", "horses[].onlyThisHorse"),
  practice("right-harms-another", "A head is not pressed for one horse when that harms another that wears the saddle.", "horses[].traces"),
] as const;

export const STANDING_RULES = [
  practice("standing-warranty", "While the maker's warranty runs (under five years when nobody knows), the maker's permission comes first.", "saddle.standing.inWarranty", "saddle.past.age", "saddle.standing.makerPermits"),
  practice("standing-maker-refuses", "The maker does not permit this work by this person.", "saddle.standing.makerPermits"),
  practice("standing-may-not-assess", "Who may not judge a fit refers to a colleague who may.", "worker.assess", "worker.countersigned"),
  practice("standing-may-not-exchange", "Who may not exchange a plate refers to a colleague who may.", "worker.exchange", "worker.countersigned"),
  practice("standing-may-not-press", "Who may judge but not press prepares the job and refers to a colleague who may.", "worker.press", "worker.countersigned"),
  practice("standing-may-not-strip", "Who may not strip refers to a colleague who may.", "worker.strip", "worker.countersigned"),
  practice("standing-assess-not-known", "No head is pressed before it is known who may judge the fit.", "worker.assess", "worker.countersigned"),
  practice("standing-exchange-not-known", "No plate is exchanged before it is known who may.", "worker.exchange", "worker.countersigned"),
  practice("standing-press-not-known", "No head is pressed before it is known who may.", "worker.press", "worker.countersigned"),
  practice("standing-strip-not-known", "No saddle is stripped before it is known who may.", "worker.strip", "worker.countersigned"),
] as const;

export const WAY_RULES = [
  practice("way-no-exchange", "A head without a changeable plate or inserts is not exchanged.", "saddle.build.exchange"),
  practice("way-changeable", "A changeable head is moved by exchange; no plate is ever bent or pressed to size.", "saddle.build.exchange"),
  practice("way-polymer-bar", "Polymer with a metal bar is pressed by a qualified colleague, warm, in small passes; this program does not calculate it yet.", "saddle.build"),
  practice("way-polymer-solid", "Solid polymer is moved by heat, never by pressure, and only by the maker's people; this program does not calculate it yet.", "saddle.build"),
  practice("way-maker-only", "Side saddles, half trees, hinged or screw heads, composites and heads that nothing moves are the maker's.", "saddle.build"),
  practice("way-build-not-known", "No head is moved before it is known how it is built.", "saddle.build.arch", "saddle.build.metal", "saddle.build.exchange", "saddle.build.movedBy"),
  practice("way-owners-word", "A head is not pressed on an owner's word for how it is built.", "saddle.build.toldBy"),
  practice("way-not-told", "No head is moved before somebody has told how it is built, and by what sign.", "saddle.build.toldBy"),
] as const;
