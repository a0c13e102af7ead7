import { candidate, sweep } from "./case.ts";
import {
  byOthers,
  INSERTS,
  NARROW,
  out,
  PLATE,
  PRESSES,
  plates,
  positions,
  type Row,
} from "./combination-bases.ts";

const NO_EXCHANGE = ["exchange", ...PRESSES] as const;

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

/** Changeable heads, an earlier change taken back, and what is the maker's. */
export const BUILD_ROWS: readonly Row[] = [...CHANGEABLE, ...BACK, ...MAKERS];
