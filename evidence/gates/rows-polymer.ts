import { sweep } from "./case.ts";
import { BAR, heat, NARROW, narrow, PRESSES, type Row, SOLID, WARM_BAR } from "./combination-bases.ts";

const NO_EXCHANGE = ["exchange", ...PRESSES] as const;

/** Polymer: with a bar, at a press of its own; solid, by its maker's people. */
export const POLYMER_ROWS: readonly Row[] = [
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
    { saddle: "strip-before-altering", work: "maker", shut: PRESSES },
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
