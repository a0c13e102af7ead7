import type { Candidate, CaseToJudge } from "../../core/src/judge/input.ts";
import { BY_MAKERS_PEOPLE } from "../../core/src/reach/forming.ts";
import type { Act, HorseAnswer, SaddleAnswer, WorkAnswer } from "../../core/src/terms/answers.ts";
import { type Changes, candidate, faces, full, sweep } from "./case.ts";

/*
 * The trade's combinations of findings and the answer to each (common practice, no source): finding, rule, answer. One
 * row a combination; the saddle of these rows is a laminated one, a little narrow, young and sound, unless said.
 */
export const NARROW: Changes = {
  "horses[0].template": { nearTop: 0, nearMiddle: -1.5, nearTip: -3, offTop: 0, offMiddle: -1.5, offTip: -3 },
  "horses[0].girthed.handNear": "tight-at-tip",
  "horses[0].girthed.handOff": "tight-at-tip",
};
export const narrow: Partial<CaseToJudge> = {
  computedToday: faces(5.5),
  candidates: sweep("press", 2.4),
  fillMm: { near: 11, off: 11 },
};
export const BARE: Changes = {
  "saddle.looked.level": "bare",
  "saddle.looked.seenBy": "Isolde Marrak",
  "saddle.looked.parts.rivets": "sound",
  "saddle.looked.parts.layers": "sound",
  "saddle.looked.parts.plates": "sound",
};
export const PLATE: Changes = {
  "saddle.build": {
    arch: "polymer",
    metal: "bar",
    exchange: "plate",
    movedBy: "exchange",
    toldBy: "seen-through-access",
    treeTemperature: "15-C-and-over",
  },
  "saddle.looked.plateHome": "sound",
  "saddle.looked.plateBent": "no",
  "horses[0].template": {},
};
export const plates: Partial<CaseToJudge> = {
  computedToday: faces(5.5),
  candidates: [candidate(16, "exchange", 5.5)],
};
const BARRED = {
  arch: "polymer",
  metal: "bar",
  exchange: "none",
  movedBy: "press",
  toldBy: "makers-letter",
};
/** Polymer with a bar, cold from the car, and the same after hours at 20 C. */
export const BAR: Changes = { "saddle.build": { ...BARRED, treeTemperature: "below-15-C" } };
export const WARM_BAR: Changes = { "saddle.build": { ...BARRED, treeTemperature: "15-C-and-over" } };
export const SOLID: Changes = {
  "saddle.build": { ...BARRED, metal: "none", movedBy: "heat", treeTemperature: "15-C-and-over" },
};
export const heat: Partial<CaseToJudge> = {
  ...narrow,
  candidates: sweep("heat", 2.4, { shutBy: [BY_MAKERS_PEOPLE] }),
};
export const INSERTS: Changes = {
  ...PLATE,
  "saddle.build": { ...BARRED, arch: "wood", metal: "plates", exchange: "insert", movedBy: "exchange" },
  "saddle.inserts": {
    positions: [
      { name: "1", spreadTips: 205, halfAngle: 44 },
      { name: "2", spreadTips: 221, halfAngle: 49 },
    ],
    near: 1,
    off: 1,
    lockHome: "sound",
    keyway: "sound",
    grit: "no",
  },
};
export const positions: Partial<CaseToJudge> = {
  computedToday: faces(5.5),
  candidates: [candidate(16, "exchange", 5.5, { plate: undefined, position: 1 })],
};
export const byOthers: Partial<CaseToJudge> = {
  ...narrow,
  candidates: sweep("imagined", 2.4, { shutBy: ["not-calculated-for-this-build"] }),
};
export const WASTED: Changes = {
  "horses[0].template": { nearTop: 0, nearMiddle: 2, nearTip: 4, offTop: 0, offMiddle: 2, offTip: 4 },
  "horses[0].girthed.handNear": "tight-at-top",
  "horses[0].girthed.handOff": "tight-at-top",
  "horses[0].standing.hollowNear": 14,
  "horses[0].standing.hollowOff": 15,
  "horses[0].trunkUnchanged": "yes",
};
export const pressed = (mm: number, knownHand: "yes" | "no" = "yes") => ({
  date: "2030",
  change: mm,
  by: "a hand",
  knownHand,
  way: "press",
});
export const OTHER_HORSE: Changes = { "horses[1]": { ...full.horses[0], name: "Second" } };
export const fits = (candidates: readonly Candidate[], second: Candidate["after"]): readonly Candidate[] =>
  candidates.map((one) => ({ ...one, others: [{ horseIndex: 1, after: second }] }));

/** No difference to today could be worked out: the readings that move with the rest have no value afterwards. */
export const restless = sweep("press", 0).map((one) => ({
  ...one,
  after: [
    ...one.after,
    ...[
      "clearance-girthed",
      "clearance-rider-up",
      "clearance-half-seat",
      ...["girthed, near", "girthed, off", "rider up, near", "rider up, off"].map(
        (at) => `clearance-side|${at}`,
      ),
      "seat-slope",
    ].map((name) => {
      const [rule = "", at = ""] = name.split("|");
      return { rule, at, value: undefined, u: undefined, missing: [] };
    }),
  ],
}));

export interface Expected {
  readonly horse?: HorseAnswer;
  readonly saddle?: SaddleAnswer;
  readonly work: WorkAnswer;
  readonly also?: readonly WorkAnswer[];
  /** Acts that must not be permitted. */
  readonly shut?: readonly Act[];
}
export type Row = readonly [
  finding: string,
  rule: string,
  changes: Changes,
  more: Partial<CaseToJudge>,
  expected: Expected,
];

export const PRESSES: readonly Act[] = ["press-dressed", "press-bare"];
export const out: Expected = { saddle: "out-till-repaired", work: "colleague", shut: ["ride", ...PRESSES] };
export const vetFirst: Expected = {
  horse: "vet-before-altering",
  work: "not-now",
  shut: ["flock", ...PRESSES],
};
export const vetNow: Expected = {
  ...vetFirst,
  horse: "vet-before-riding",
  shut: ["ride", "flock", ...PRESSES],
};
