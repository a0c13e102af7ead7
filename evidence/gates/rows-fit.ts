import { candidate, faces, sweep } from "./case.ts";
import { fits, NARROW, narrow, OTHER_HORSE, PLATE, plates, type Row, WASTED } from "./combination-bases.ts";

/** The whole, what comes before the head, and the other horses of the saddle. */
export const FIT_ROWS: readonly Row[] = [
  // The whole, and what comes before the head.
  [
    "hollow over 10 mm, head too wide",
    "fit-wasted",
    WASTED,
    { computedToday: faces(-7), candidates: sweep("press", -2.4), fillMm: { near: 10, off: 11 } },
    { work: "panel" },
  ],
  [
    "head right, bridge by a flat rear",
    "fit-panel",
    { "horses[0].girthed.bridgeNear": 9, "horses[0].girthed.bridgeOff": 9 },
    {},
    { work: "panel" },
  ],
  [
    "panel flat under a narrow head",
    "fit-panel-first",
    { ...NARROW, "saddle.panel.state": "flat" },
    narrow,
    { work: "panel", also: ["alter-dressed"] },
  ],
  [
    "on the blade, no room behind",
    "fit-wrong-place",
    {
      "horses[0].girthed.pointBehindBladeNear": 10,
      "horses[0].girthed.pointBehindBladeOff": 10,
      "horses[0].girthed.rearBeforeLastRib": 5,
    },
    {},
    { work: "other-saddle" },
  ],
  [
    "fits this horse, harms the other",
    "right-harms-another",
    { ...NARROW, ...OTHER_HORSE },
    { ...narrow, candidates: fits(sweep("press", 2.4), faces(-9)) },
    { work: "other-saddle" },
  ],
  [
    "a plate that fits this horse and not the other: plates go by horse",
    "fit-exchange",
    { ...PLATE, ...OTHER_HORSE },
    { ...plates, candidates: fits([candidate(16, "exchange", 5.5)], faces(-9)) },
    { work: "change-plate" },
  ],
  [
    "the other horse has a trace and could not be judged",
    "right-other-horses",
    { ...NARROW, ...OTHER_HORSE },
    narrow,
    { work: "measure-more", also: ["alter-dressed"] },
  ],
  [
    "the other horse is judged and bears it",
    "fit-press",
    { ...NARROW, ...OTHER_HORSE },
    { ...narrow, candidates: fits(sweep("press", 2.4), faces(0)) },
    { work: "alter-dressed" },
  ],
  [
    "seat too small",
    "fit-rider-first",
    { ...NARROW, "rider.seatTooSmall": "yes" },
    narrow,
    { work: "set-up", also: ["alter-dressed"] },
  ],
  ["stirrups a hole apart", "fit-rider-first", { "rider.stirrupHolesOff": 9 }, {}, { work: "set-up" }],
  [
    "girth groove over 40 mm from the strap line: girthing, head left",
    "fit-set-up",
    { ...NARROW, "horses[0].girthed.strapLine": 137 },
    narrow,
    { work: "set-up", also: ["alter-dressed"] },
  ],
];
