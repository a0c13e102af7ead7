import { sweep } from "./case.ts";
import { BARE, NARROW, narrow, out, PLATE, PRESSES, plates, pressed, type Row } from "./combination-bases.ts";

/** The tree: cracks, noise, parts that hang, what happened to it, caps, marks. */
export const SADDLE_ROWS: readonly Row[] = [
  // Cracks, noise, parts that hang.
  [
    "a white stress line in the head",
    "saddle-cracked",
    { ...NARROW, "saddle.looked.whiteLine": "yes" },
    narrow,
    { saddle: "out-for-good", work: "other-saddle", shut: ["ride", "strip"] },
  ],
  ["a click in the head", "saddle-part-failed", { ...NARROW, "saddle.looked.noise": "yes" }, narrow, out],
  ["a bar rivet loose, tree sound", "saddle-part-failed", { "saddle.looked.parts.bars": "failed" }, {}, out],
  [
    "a strap failing, in warranty",
    "saddle-part-failed",
    {
      "saddle.looked.parts.girth-straps": "failed",
      "saddle.standing.inWarranty": "yes",
      "saddle.standing.makerPermits": "no",
    },
    {},
    { saddle: "out-till-repaired", work: "maker", also: ["colleague"] },
  ],
  // What happened to it.
  [
    "rolled on, stripped, nothing found: ridden, never pressed",
    "saddle-incident-bare",
    { ...NARROW, ...BARE, "saddle.past.incidents.rolledOn": "yes" },
    narrow,
    { saddle: "sound-bare", work: "other-saddle", shut: PRESSES },
  ],
  [
    "second-hand: incidents not known",
    "saddle-incident-not-known",
    { ...NARROW, "saddle.past.ownedSinceNew": "no" },
    narrow,
    { saddle: "strip-before-altering", work: "strip-first", shut: PRESSES },
  ],
  [
    "half-angles 3 degrees apart, dressed",
    "saddle-twisted",
    { ...NARROW, "saddle.head.halfAngleOff": 47 },
    narrow,
    { saddle: "strip-before-altering", work: "strip-first", shut: PRESSES },
  ],
  [
    "half-angles 3 degrees apart, bare",
    "saddle-twisted",
    { ...NARROW, ...BARE, "saddle.head.halfAngleOff": 47 },
    narrow,
    { work: "maker", shut: PRESSES },
  ],
  [
    "diagonals 6 mm apart: no plate either",
    "saddle-twisted",
    { ...PLATE, "saddle.lines.diagonalOff": 440, "saddle.lines.diagonalNear": 446 },
    plates,
    { work: "strip-first", shut: ["exchange", ...PRESSES] },
  ],
  [
    "repaired, seen bare",
    "saddle-repaired",
    { ...NARROW, ...BARE, "saddle.past.repaired": "yes" },
    narrow,
    { work: "maker", shut: PRESSES },
  ],
  // Caps: net, path, reversals (the settings that they shut are made by reach).
  [
    "net change, path or third reversal passed",
    "fit-spent",
    NARROW,
    { ...narrow, candidates: sweep("press", 2.4, { shutBy: ["cap-reversals"] }) },
    { work: "spent" },
  ],
  [
    "earlier press by an unknown hand",
    "saddle-past-not-clean",
    {
      ...NARROW,
      "saddle.past.alterationsKnown": "listed",
      "saddle.past.alterations": [pressed(4, "no")],
      "saddle.head.asMadeSpreadTips": 201,
    },
    narrow,
    { work: "strip-first", shut: PRESSES },
  ],
  [
    "bare and sound, but nobody knows how far it was moved",
    "way-moved-not-known",
    {
      ...NARROW,
      ...BARE,
      "saddle.past.alterationsKnown": "unknown",
      "saddle.head.asMadeSpreadTips": "not-looked",
    },
    narrow,
    { work: "measure-more", shut: PRESSES },
  ],
  [
    "a rust ring at a rivet",
    "saddle-other-part-doubtful",
    { ...NARROW, "saddle.looked.rust": "yes" },
    narrow,
    { work: "strip-first", shut: ["exchange", ...PRESSES] },
  ],
  [
    "musty",
    "saddle-other-part-doubtful",
    { ...NARROW, "saddle.looked.musty": "yes" },
    narrow,
    { work: "strip-first", shut: ["exchange", ...PRESSES] },
  ],
  [
    "stored hot, of wood",
    "saddle-other-part-doubtful",
    { ...NARROW, "saddle.past.storedHot": "yes" },
    narrow,
    { work: "strip-first", shut: ["exchange", ...PRESSES] },
  ],
];
