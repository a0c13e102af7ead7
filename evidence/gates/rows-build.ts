import { candidate, sweep } from "./case.ts";
import {
  BAR,
  byOthers,
  heat,
  INSERTS,
  NARROW,
  narrow,
  out,
  PLATE,
  PRESSES,
  plates,
  positions,
  type Row,
  SOLID,
  WARM_BAR,
} from "./combination-bases.ts";

const NO_EXCHANGE = ["exchange", ...PRESSES] as const;

const POLYMER: readonly Row[] = [
  [
    "polymer with a bar, young, sound, warm: the press",
    "fit-press",
    { ...NARROW, ...WARM_BAR },
    narrow,
    { saddle: "sound-dressed", work: "alter-dressed", shut: ["exchange"] },
  ],
  [
    "polymer with a bar, under 15 C",
    "way-polymer-cold",
    { ...NARROW, ...BAR },
    narrow,
    { work: "measure-more", also: ["alter-dressed"], shut: PRESSES },
  ],
  [
    "polymer with a bar, warmth not looked at",
    "way-polymer-cold",
    { ...NARROW, ...WARM_BAR, "saddle.build.treeTemperature": "not-looked" },
    narrow,
    { work: "measure-more", also: ["alter-dressed"], shut: PRESSES },
  ],
  [
    "polymer with a bar, the change beyond its own caps",
    "fit-spent",
    { ...NARROW, ...WARM_BAR },
    { ...narrow, candidates: sweep("press", 2.4, { shutBy: ["cap-from-as-made"] }) },
    { work: "spent" },
  ],
  [
    "a white stress line in polymer",
    "saddle-cracked",
    { ...NARROW, ...WARM_BAR, "saddle.looked.whiteLine": "yes" },
    narrow,
    { saddle: "out-for-good", work: "other-saddle", shut: ["ride", "strip"] },
  ],
  [
    "what holds the bar is in doubt",
    "way-bar-fixings",
    { ...NARROW, ...WARM_BAR, "saddle.looked.parts.rivets": "doubtful" },
    narrow,
    { work: "strip-first", also: ["maker", "alter-stripped"], shut: PRESSES },
  ],
  [
    "polymer heated before",
    "saddle-repaired",
    { ...NARROW, ...WARM_BAR, "saddle.past.heatedBefore": "yes" },
    narrow,
    { saddle: "strip-before-altering", work: "maker", shut: PRESSES },
  ],
  [
    "polymer baked in a car",
    "saddle-repaired",
    { ...NARROW, ...WARM_BAR, "saddle.past.storedHot": "yes" },
    narrow,
    { saddle: "strip-before-altering", work: "strip-first", shut: PRESSES },
  ],
  [
    "polymer with a bar, worker not qualified for a press",
    "standing-may-not-press",
    { ...NARROW, ...WARM_BAR, "worker.press": "no" },
    narrow,
    { work: "colleague", also: ["alter-dressed"], shut: PRESSES },
  ],
  [
    "polymer with a bar, twisted",
    "saddle-twisted",
    { ...NARROW, ...WARM_BAR, "saddle.head.halfAngleOff": 47 },
    narrow,
    { work: "strip-first", also: ["alter-stripped"], shut: PRESSES },
  ],
  [
    "polymer with a bar, the horse just back in work",
    "horse-off-work",
    {
      ...NARROW,
      ...WARM_BAR,
      "horses[0].history.offWorkWeeks": 10,
      "horses[0].history.backInWorkWeeks": 2,
    },
    narrow,
    { horse: "come-back", work: "not-now", also: ["alter-dressed"], shut: PRESSES },
  ],
  [
    "solid polymer: what the maker's people would be asked for",
    "fit-heat",
    { ...NARROW, ...SOLID },
    heat,
    { work: "heat-by-maker", shut: NO_EXCHANGE },
  ],
  [
    "solid polymer without a template: heat is asked for on no two angles",
    "fit-press-needs-template",
    { ...NARROW, ...SOLID, "horses[0].template": {} },
    heat,
    { work: "measure-more", also: ["heat-by-maker"], shut: NO_EXCHANGE },
  ],
  [
    "solid polymer heated as often as it may be",
    "fit-spent",
    { ...NARROW, ...SOLID },
    {
      ...heat,
      candidates: sweep("heat", 2.4, { shutBy: ["heat-by-makers-people", "cap-heat-times"] }),
    },
    { work: "spent", shut: NO_EXCHANGE },
  ],
];

const CHANGEABLE: readonly Row[] = [
  [
    "a plate in a cold polymer head",
    "way-polymer-cold",
    { ...PLATE, "saddle.build.treeTemperature": "below-15-C" },
    plates,
    { work: "measure-more", also: ["change-plate"], shut: NO_EXCHANGE },
  ],
  [
    "plate bent",
    "saddle-part-failed",
    { ...PLATE, "saddle.looked.plateBent": "yes" },
    plates,
    { ...out, shut: ["ride", ...NO_EXCHANGE] },
  ],
  [
    "one edge not home",
    "saddle-part-failed",
    { ...PLATE, "saddle.looked.plateHome": "failed" },
    plates,
    { ...out, shut: ["ride", ...NO_EXCHANGE] },
  ],
  [
    "inserts: another position fits",
    "fit-exchange",
    INSERTS,
    positions,
    { work: "change-insert", shut: PRESSES },
  ],
  [
    "inserts not alike",
    "way-inserts-unlike",
    { ...INSERTS, "saddle.inserts.off": 2 },
    positions,
    { ...out, shut: ["ride", ...NO_EXCHANGE] },
  ],
  [
    "inserts: nobody read where one side stands",
    "way-inserts-not-known",
    { ...INSERTS, "saddle.inserts.off": "not-looked" },
    positions,
    { work: "measure-more", also: ["change-insert"], shut: NO_EXCHANGE },
  ],
  [
    "inserts: grit in a keyway",
    "way-inserts-grit",
    { ...INSERTS, "saddle.inserts.grit": "yes" },
    positions,
    { work: "measure-more", also: ["change-insert"], shut: NO_EXCHANGE },
  ],
  [
    "inserts: the lock not home",
    "saddle-part-failed",
    { ...INSERTS, "saddle.inserts.lockHome": "failed" },
    positions,
    { ...out, shut: ["ride", ...NO_EXCHANGE] },
  ],
  [
    "inserts: a keyway that may be worn",
    "saddle-rider-part-doubtful",
    { ...INSERTS, "saddle.inserts.keyway": "doubtful" },
    positions,
    { saddle: "strip-before-riding", work: "strip-first", shut: ["ride", ...NO_EXCHANGE] },
  ],
  [
    "inserts: no position makes it",
    "fit-no-position",
    INSERTS,
    { ...positions, candidates: sweep("imagined", 5.5, { shutBy: ["no-such-position"] }) },
    { work: "maker", shut: PRESSES },
  ],
  [
    "inserts: a position not read",
    "fit-cannot-tell",
    INSERTS,
    { ...positions, candidates: sweep("imagined", 5.5, { shutBy: ["position-not-read"] }) },
    { work: "measure-more", shut: PRESSES },
  ],
  [
    "inserts in warranty, the maker not asked",
    "standing-warranty",
    { ...INSERTS, "saddle.standing.inWarranty": "yes", "saddle.standing.makerPermits": "unknown" },
    positions,
    { work: "maker", also: ["change-insert"], shut: NO_EXCHANGE },
  ],
];

const SET_BACK = { date: "2030", by: "a hand", knownHand: "yes", way: "exchange", change: -16 };
const OLD_PLATE = {
  ...PLATE,
  "saddle.head.asMadeSpreadTips": 221,
  "saddle.past.alterationsKnown": "listed",
  "saddle.past.alterations": [SET_BACK],
  platesAtHand: [{ label: "the one before", spreadTips: 221, wasInThisHead: "yes" }],
};

/** An earlier change taken back by what was in the head before. */
const BACK: readonly Row[] = [
  ["the plate before the last, kept", "fit-set-back", OLD_PLATE, plates, { work: "set-back" }],
  [
    "another plate as wide as that one",
    "fit-exchange",
    { ...OLD_PLATE, platesAtHand: [{ label: "another", spreadTips: 221 }] },
    plates,
    { work: "change-plate" },
  ],
  [
    "inserts moved the other way than last time",
    "fit-set-back",
    {
      ...INSERTS,
      "saddle.head.asMadeSpreadTips": 221,
      "saddle.past.alterationsKnown": "listed",
      "saddle.past.alterations": [SET_BACK],
    },
    { ...positions, candidates: [candidate(16, "exchange", 5.5, { plate: undefined, position: 1 })] },
    { work: "set-back", shut: PRESSES },
  ],
];

const MAKERS: readonly Row[] = [
  [
    "side saddle",
    "way-maker-only",
    { ...NARROW, "saddle.build.form": "side-saddle" },
    byOthers,
    { work: "maker", shut: NO_EXCHANGE },
  ],
  [
    "composite arch",
    "way-maker-only",
    { ...NARROW, "saddle.build.arch": "composite" },
    byOthers,
    { work: "maker", shut: NO_EXCHANGE },
  ],
];

/** How the head is built: polymer, changeable heads, what is the maker's. */
export const BUILD_ROWS: readonly Row[] = [...POLYMER, ...CHANGEABLE, ...BACK, ...MAKERS];
