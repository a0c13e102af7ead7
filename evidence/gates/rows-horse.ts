import { NARROW, narrow, PRESSES, type Row, vetFirst, vetNow } from "./combination-bases.ts";

/** The horse, and what it carries. */
export const HORSE_ROWS: readonly Row[] = [
  // The horse.
  ["uneven", "horse-lame", { ...NARROW, "horses[0].moving.uneven": "yes" }, narrow, vetNow],
  ["nerve signs", "horse-nerves", { ...NARROW, "horses[0].history.nerveSigns": "yes" }, narrow, vetNow],
  ["a wound", "horse-lesion", { ...NARROW, "horses[0].history.wound": "yes" }, narrow, vetNow],
  [
    "reaction 3",
    "horse-pain-strong",
    { ...NARROW, "horses[0].hands.loin.off": { grade: 3 } },
    narrow,
    vetNow,
  ],
  ...(
    [
      "standing.heat",
      "history.painkillers7Days",
      "history.fall",
      "history.oneSidedMuscleLoss",
      "history.weightFalling",
      "history.suddenChange",
    ] as const
  ).map(
    (place): Row => [
      place,
      "horse-other-sign",
      { ...NARROW, [`horses[0].${place}`]: "yes" },
      narrow,
      vetFirst,
    ],
  ),
  [
    "eight ridden signs",
    "horse-other-sign",
    { ...NARROW, "horses[0].history.riddenSigns": 8 },
    narrow,
    vetFirst,
  ],
  [
    "slips the same way: no one-sided flocking",
    "horse-other-sign",
    { "horses[0].history.slipsSameWay": "yes", "saddle.panel.state": "flat" },
    {},
    vetFirst,
  ],
  [
    "rider and tack over 20 %, all else right",
    "fit-rider-heavy",
    { "rider.massDressed": 110 },
    {},
    { work: "set-up" },
  ],
  [
    "rider and tack over 20 %, head narrow: no cure by altering",
    "fit-rider-heavy",
    { ...NARROW, "rider.massDressed": 110 },
    narrow,
    { work: "set-up", also: ["alter-dressed"] },
  ],
  [
    "growing: no head is pressed for it",
    "horse-changing",
    { ...NARROW, "horses[0].history.growing": "yes" },
    narrow,
    { horse: "come-back", work: "not-now", also: ["alter-dressed"], shut: PRESSES },
  ],
  [
    "growing, all right today",
    "horse-changing",
    { "horses[0].history.growing": "yes" },
    {},
    { horse: "come-back", work: "nothing", shut: PRESSES },
  ],
  [
    "a hollow behind one shoulder under a narrow head: it is not made wider for it either",
    "horse-changing",
    { ...NARROW, "horses[0].standing.hollowOff": 13 },
    narrow,
    { horse: "come-back", work: "not-now", shut: PRESSES },
  ],
  [
    "nobody asked whether it is growing",
    "horse-shape-not-known",
    { ...NARROW, "horses[0].history.growing": "unknown" },
    narrow,
    { horse: "no-reason-seen", work: "measure-more", shut: PRESSES },
  ],
  [
    "no straight-edge behind one shoulder",
    "horse-shape-not-known",
    { ...NARROW, "horses[0].standing.hollowNear": "not-looked" },
    narrow,
    { work: "measure-more", shut: PRESSES },
  ],
];
