import { faces, full, sweep } from "./case.ts";
import {
  fits,
  NARROW,
  narrow,
  out,
  PLATE,
  PRESSES,
  plates,
  type Row,
  restless,
  vetFirst,
} from "./combination-bases.ts";

/** Orders that would be unsafe. */
export const ORDERS: readonly Row[] = [
  [
    "fit before soundness: a broken tree that fits",
    "saddle-cracked",
    { "saddle.looked.whiteLine": "yes" },
    {},
    { saddle: "out-for-good", work: "other-saddle", shut: ["ride"] },
  ],
  [
    "evidence before soundness: a loose bar, and readings missing",
    "saddle-part-failed",
    { "saddle.looked.parts.bars": "failed", "horses[0].girthed": {} },
    {},
    out,
  ],
  [
    "standing before soundness: a loose bar is no matter of the warranty alone",
    "saddle-part-failed",
    {
      "saddle.looked.parts.bars": "failed",
      "saddle.standing.inWarranty": "yes",
      "saddle.standing.makerPermits": "no",
    },
    {},
    { saddle: "out-till-repaired", work: "maker", shut: ["ride"] },
  ],
  [
    "standing before fit: nothing fits, so nothing is sent to the maker",
    "fit-other-saddle",
    { ...NARROW, "saddle.standing.inWarranty": "yes", "saddle.standing.makerPermits": "no" },
    { computedToday: faces(5.5, 5.5, 12), candidates: sweep("press", 2.4, {}, 12) },
    { work: "other-saddle" },
  ],
  [
    "horse after anything: a sore horse under a broken saddle is sold none",
    "horse-pain-clear",
    { ...NARROW, "horses[0].hands.loin.near": { grade: 2, twice: "yes" }, "saddle.looked.whiteLine": "yes" },
    narrow,
    { ...vetFirst, saddle: "out-for-good", also: [] },
  ],
  [
    "way after consent: consent is asked before it is known how",
    "right-consent-not-asked",
    { ...NARROW, "saddle.past.age": 20, "saddle.standing.ownerConsents": "not-asked" },
    narrow,
    { work: "measure-more", shut: ["strip", ...PRESSES] },
  ],
  [
    "one station first: front right, rails wrong",
    "fit-other-saddle",
    {},
    { computedToday: faces(0, 0, 12), candidates: sweep("press", 0, {}, 12) },
    { work: "other-saddle" },
  ],
];

/** What a "nothing" or a head waits for, or is told beside. */
export const BEFORE: readonly Row[] = [
  ["never seen ridden", "fit-not-ridden", { "horses[0].moved": {} }, {}, { work: "measure-more" }],
  [
    "rider not asked, nothing found",
    "fit-rider-first",
    { "rider.seatTooSmall": "not-asked" },
    {},
    { work: "measure-more" },
  ],
  [
    "rider not asked, head narrow",
    "fit-rider-first",
    { ...NARROW, "rider.stirrupHolesNear": "not-asked" },
    narrow,
    { work: "measure-more", also: ["alter-dressed"] },
  ],
  [
    "panel not looked at, head narrow",
    "fit-panel-first",
    { ...NARROW, "saddle.panel.state": "not-looked" },
    narrow,
    { work: "measure-more", also: ["alter-dressed"] },
  ],
  [
    "does not come to rest in the calculation, all else inside",
    "fit-does-not-rest",
    {},
    { candidates: restless, notAtRest: "tips-front" },
    { work: "measure-more" },
  ],
  [
    "does not come to rest, and the girth is far off",
    "fit-does-not-rest",
    { "horses[0].girthed.strapLine": 137 },
    { candidates: restless, notAtRest: "tips-front" },
    { work: "set-up" },
  ],
  [
    "a plate against both hands",
    "fit-exchange-against-hands",
    { ...PLATE, "horses[0].girthed.handNear": "tight-at-top", "horses[0].girthed.handOff": "loose" },
    plates,
    { work: "measure-more", also: ["change-plate"] },
  ],
  [
    "hands tight at the tips, the template 12 mm wide: no saddle is given up on that",
    "fit-hands-against-template",
    {
      ...NARROW,
      "horses[0].template": { nearTop: 0, nearMiddle: 2, nearTip: 4.5, offTop: 0, offMiddle: 2, offTip: 4.5 },
    },
    { ...narrow, candidates: sweep("press", 2.4, {}, 12) },
    { work: "measure-more" },
  ],
  [
    "the other horse's clearances and rock were not read",
    "right-other-horses",
    {
      ...NARROW,
      "horses[1]": { ...full.horses[0], name: "Second", girthed: {} },
    },
    { ...narrow, candidates: fits(sweep("press", 2.4), faces(0)) },
    { work: "measure-more", also: ["alter-dressed"] },
  ],
  [
    "another saddle, and the rider too heavy: told all the same",
    "fit-rider-heavy",
    { ...NARROW, "rider.massDressed": 110 },
    { ...narrow, candidates: sweep("press", 2.4, {}, 12) },
    { work: "other-saddle" },
  ],
];
