import { practice } from "./make.ts";

export const STANDING_RULES = [
  practice(
    "standing-warranty",
    "While the maker's warranty runs (under five years when nobody knows), the maker's permission comes first.",
    "saddle.standing.inWarranty",
    "saddle.past.age",
    "saddle.standing.makerPermits",
  ),
  practice(
    "standing-maker-refuses",
    "The maker does not permit this work by this person.",
    "saddle.standing.makerPermits",
  ),
  practice(
    "standing-may-not-assess",
    "Who may not judge a fit refers to a colleague who may.",
    "worker.assess",
    "worker.countersigned",
  ),
  practice(
    "standing-may-not-exchange",
    "Who may not exchange a plate refers to a colleague who may.",
    "worker.exchange",
    "worker.countersigned",
  ),
  practice(
    "standing-may-not-press",
    "Who may judge but not press prepares the job and refers to a colleague who may.",
    "worker.press",
    "worker.countersigned",
  ),
  practice(
    "standing-may-not-strip",
    "Who may not strip refers to a colleague who may.",
    "worker.strip",
    "worker.countersigned",
  ),
  practice(
    "standing-assess-not-known",
    "No head is pressed before it is known who may judge the fit.",
    "worker.assess",
    "worker.countersigned",
  ),
  practice(
    "standing-exchange-not-known",
    "No plate is exchanged before it is known who may.",
    "worker.exchange",
    "worker.countersigned",
  ),
  practice(
    "standing-press-not-known",
    "No head is pressed before it is known who may.",
    "worker.press",
    "worker.countersigned",
  ),
  practice(
    "standing-strip-not-known",
    "No saddle is stripped before it is known who may.",
    "worker.strip",
    "worker.countersigned",
  ),
] as const;
