import { NARROW, narrow, PRESSES, type Row } from "./combination-bases.ts";

/** Right and standing. */
export const STANDING_ROWS: readonly Row[] = [
  // Standing.
  [
    "warranty unknown, tree of four years",
    "standing-warranty",
    { ...NARROW, "saddle.standing.inWarranty": "unknown", "saddle.standing.makerPermits": "unknown" },
    narrow,
    { work: "maker", also: ["alter-dressed"], shut: ["exchange", "strip", ...PRESSES] },
  ],
  [
    "in a claim",
    "right-claim",
    { ...NARROW, "saddle.standing.claimOrDispute": "yes" },
    narrow,
    { work: "leave-as-found", shut: ["ride", "strip", "flock", ...PRESSES] },
  ],
  [
    "may assess, not press",
    "standing-may-not-press",
    { ...NARROW, "worker.press": "no" },
    narrow,
    { work: "colleague", also: ["alter-dressed"], shut: PRESSES },
  ],
  [
    "a trainee alone",
    "standing-may-not-press",
    { ...NARROW, "worker.press": "trainee", "worker.countersigned": "no" },
    narrow,
    { work: "colleague", also: ["alter-dressed"], shut: PRESSES },
  ],
  [
    "may not assess, and finds nothing",
    "standing-may-not-assess",
    { "worker.assess": "no" },
    {},
    { work: "colleague", also: ["nothing"] },
  ],
  [
    "serial differs",
    "saddle-not-bare",
    { ...NARROW, "saddle.standing.serialIsOfRecord": "no" },
    narrow,
    { saddle: "strip-before-altering", work: "strip-first", shut: PRESSES },
  ],
];
