import { describe, expect, it } from "vitest";
import { recordOf } from "../../core/src/judge/because.ts";
import type { Candidate, CaseToJudge } from "../../core/src/judge/input.ts";
import { judgeCase } from "../../core/src/judge/judge-case.ts";
import type { Act, HorseAnswer, SaddleAnswer, WorkAnswer } from "../../core/src/terms/answers.ts";
import { type Changes, candidate, faces, figure, full, sweep, toJudge } from "./case.ts";

/*
 * The trade's combinations of findings and the answer to each (common practice, no source): finding, rule, answer. One
 * row a combination; the saddle of these rows is a laminated one, a little narrow, young and sound, unless said.
 */
const NARROW: Changes = {
  "horses[0].template": { nearTop: 0, nearMiddle: -1.5, nearTip: -3, offTop: 0, offMiddle: -1.5, offTip: -3 },
  "horses[0].girthed.handNear": "tight-at-tip",
  "horses[0].girthed.handOff": "tight-at-tip",
};
const narrow: Partial<CaseToJudge> = {
  computedToday: faces(5.5),
  candidates: sweep("press", 2.4),
  fillMm: { near: 11, off: 11 },
};
const BARE: Changes = {
  "saddle.looked.level": "bare",
  "saddle.looked.seenBy": "Isolde Marrak",
  "saddle.looked.parts.rivets": "sound",
  "saddle.looked.parts.layers": "sound",
  "saddle.looked.parts.plates": "sound",
};
const PLATE: Changes = {
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
const plates: Partial<CaseToJudge> = {
  computedToday: faces(5.5),
  candidates: [candidate(16, "exchange", 5.5)],
};
const BAR: Changes = {
  "saddle.build": {
    arch: "polymer",
    metal: "bar",
    exchange: "none",
    movedBy: "press",
    toldBy: "makers-letter",
    treeTemperature: "below-15-C",
  },
};
const byOthers: Partial<CaseToJudge> = {
  ...narrow,
  candidates: sweep("imagined", 2.4, { shutBy: ["not-calculated-for-this-build"] }),
};
const WASTED: Changes = {
  "horses[0].template": { nearTop: 0, nearMiddle: 2, nearTip: 4, offTop: 0, offMiddle: 2, offTip: 4 },
  "horses[0].girthed.handNear": "tight-at-top",
  "horses[0].girthed.handOff": "tight-at-top",
  "horses[0].standing.hollowNear": 14,
  "horses[0].standing.hollowOff": 15,
  "horses[0].trunkUnchanged": "yes",
};
const pressed = (mm: number, knownHand: "yes" | "no" = "yes") => ({
  date: "2030",
  change: mm,
  by: "a hand",
  knownHand,
  way: "press",
});
const OTHER_HORSE: Changes = { "horses[1]": { ...full.horses[0], name: "Second" } };
const fits = (candidates: readonly Candidate[], second: Candidate["after"]): readonly Candidate[] =>
  candidates.map((one) => ({ ...one, others: [{ horseIndex: 1, after: [...second, ...clear] }] }));
const clear = [
  figure("clearance-girthed", "", 56),
  figure("clearance-rider-up", "", 52),
  figure("clearance-half-seat", "", 44),
  figure("clearance-side", "girthed, near", 20),
  figure("channel-over-ridge", "mid", 33),
  figure("channel-width", "mid", 75),
  figure("rock", "", 3),
];
/** No difference to today could be worked out: the readings that move with the rest have no value afterwards. */
const restless = sweep("press", 0).map((one) => ({
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

interface Expected {
  readonly horse?: HorseAnswer;
  readonly saddle?: SaddleAnswer;
  readonly work: WorkAnswer;
  readonly also?: readonly WorkAnswer[];
  /** Acts that must not be permitted. */
  readonly shut?: readonly Act[];
}
type Row = readonly [
  finding: string,
  rule: string,
  changes: Changes,
  more: Partial<CaseToJudge>,
  expected: Expected,
];

const PRESSES: readonly Act[] = ["press-dressed", "press-bare"];
const out: Expected = { saddle: "out-till-repaired", work: "colleague", shut: ["ride", ...PRESSES] };
const vetFirst: Expected = { horse: "vet-before-altering", work: "not-now", shut: ["flock", ...PRESSES] };
const vetNow: Expected = { ...vetFirst, horse: "vet-before-riding", shut: ["ride", "flock", ...PRESSES] };

const COMBINATIONS: readonly Row[] = [
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
  // Polymer and changeable heads.
  [
    "polymer with a bar, under 15 C",
    "way-polymer-cold",
    { ...NARROW, ...BAR },
    byOthers,
    { work: "colleague", shut: PRESSES },
  ],
  [
    "a plate in a cold polymer head",
    "way-polymer-cold",
    { ...PLATE, "saddle.build.treeTemperature": "below-15-C" },
    plates,
    { work: "measure-more", also: ["change-plate"], shut: ["exchange", ...PRESSES] },
  ],
  [
    "polymer heated before",
    "saddle-repaired",
    { ...NARROW, ...BAR, "saddle.past.heatedBefore": "yes" },
    byOthers,
    { saddle: "strip-before-altering", work: "maker", shut: PRESSES },
  ],
  [
    "polymer with a bar, twisted: no colleague presses it either, before it is stripped",
    "saddle-twisted",
    { ...NARROW, ...BAR, "saddle.head.halfAngleOff": 47 },
    byOthers,
    { work: "strip-first", also: ["colleague"], shut: PRESSES },
  ],
  [
    "polymer with a bar, the horse just back in work",
    "horse-off-work",
    {
      ...NARROW,
      ...BAR,
      "horses[0].history.offWorkWeeks": 10,
      "horses[0].history.backInWorkWeeks": 2,
    },
    byOthers,
    { horse: "come-back", work: "not-now", also: ["colleague"], shut: PRESSES },
  ],
  [
    "plate bent",
    "saddle-part-failed",
    { ...PLATE, "saddle.looked.plateBent": "yes" },
    plates,
    { ...out, shut: ["ride", "exchange", ...PRESSES] },
  ],
  [
    "one edge not home, or inserts not alike",
    "saddle-part-failed",
    { ...PLATE, "saddle.looked.plateHome": "failed" },
    plates,
    { ...out, shut: ["ride", "exchange", ...PRESSES] },
  ],
  [
    "side saddle",
    "way-maker-only",
    { ...NARROW, "saddle.build.form": "side-saddle" },
    byOthers,
    { work: "maker", shut: ["exchange", ...PRESSES] },
  ],
  [
    "composite arch",
    "way-maker-only",
    { ...NARROW, "saddle.build.arch": "composite" },
    byOthers,
    { work: "maker", shut: ["exchange", ...PRESSES] },
  ],
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

/** Orders that would be unsafe. */
const ORDERS: readonly Row[] = [
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
const BEFORE: readonly Row[] = [
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
    { candidates: restless },
    { work: "measure-more" },
  ],
  [
    "does not come to rest, and the girth is far off",
    "fit-does-not-rest",
    { "horses[0].girthed.strapLine": 137 },
    { candidates: restless },
    { work: "set-up" },
  ],
  [
    "a plate against both hands",
    "fit-exchange-against-hands",
    { ...PLATE, "horses[0].girthed.handNear": "tight-at-top", "horses[0].girthed.handOff": "loose" },
    plates,
    { work: "measure-more", also: ["change-plate"] },
  ],
];

const answersOf = (changes: Changes, more: Partial<CaseToJudge>) => judgeCase(toJudge(changes, more));

describe.each([
  ["the trade's combinations", COMBINATIONS],
  ["orders that would be unsafe", ORDERS],
  ["what comes before a head, or before nothing", BEFORE],
] as const)("%s", (_name, rows) => {
  it.each(rows)("%s: %s", (_finding, rule, changes, more, expected) => {
    const { answers, waitsFor } = answersOf(changes, more);
    const { horse, saddle, work, permitted } = answers;
    const said = [...horse.because, ...saddle.because, ...work.because].map((one) => one.rule);
    expect(recordOf(rule).id).toBe(rule);
    expect(said).toContain(rule);
    expect(work.id).toBe(expected.work);
    if (expected.horse) expect(horse.id).toBe(expected.horse);
    if (expected.saddle) expect(saddle.id).toBe(expected.saddle);
    if (expected.also) expect(work.also).toEqual(expected.also);
    expect(permitted.filter((act) => expected.shut?.includes(act))).toEqual([]);
    if (work.id === "measure-more") expect(waitsFor.length).toBeGreaterThan(0);
    // A stop stands before every other line, and nothing is shown of a fit on a flag.
    const cautions = [...saddle.cautions, ...horse.cautions];
    if (["out-for-good", "out-till-repaired", "strip-before-riding"].includes(saddle.id))
      expect(saddle.cautions[0]).toContain("STOP");
    if (horse.id === "vet-before-riding") expect(horse.cautions[0]).toContain("STOP");
    if (horse.id.startsWith("vet-"))
      expect([answers.limitsToday, answers.limitsAfter, answers.setting, cautions.length > 0]).toEqual([
        [],
        [],
        undefined,
        true,
      ]);
  });
});

describe("the base that the rows change", () => {
  it("narrow, young, sound and clean is altered dressed; all right is nothing; a plate fits", () => {
    expect(answersOf(NARROW, narrow).answers.work.id).toBe("alter-dressed");
    expect(answersOf({}, {}).answers.work.id).toBe("nothing");
    expect(answersOf(PLATE, plates).answers.work.id).toBe("change-plate");
  });
});

describe("said beside the answer", () => {
  const cautionsOf = (changes: Changes, more: Partial<CaseToJudge> = {}) =>
    answersOf(changes, more).cautionIds;
  it("a hollow over 10 mm under a head that is right: back in six to eight weeks, not in six months", () => {
    const { answers, cautionIds } = answersOf({ "horses[0].standing.hollowNear": 14 }, {});
    expect([answers.work.id, cautionIds.includes("work-hollow")]).toEqual(["nothing", true]);
    expect(answers.work.nextStep).toContain("six to eight weeks");
  });
  it("nobody weighed the horse: nothing is said of the load, in words", () => {
    expect(cautionsOf({ "horses[0].mass": "not-looked" })).toContain("work-load-not-known");
    expect(cautionsOf({})).not.toContain("work-load-not-known");
  });
  it("a side of the horse more than 10 mm larger: a vet or physiotherapist before a one-sided fill", () => {
    const more = { computedToday: [...faces(0), figure("horse-sides-width", "", 12)] };
    const { answers, cautionIds } = answersOf({}, more);
    expect(cautionIds).toContain("work-horse-sides");
    expect(answers.work.because.map((one) => one.rule)).toContain("horse-sides-width");
  });
  it("a panel filled on a saddle that others wear", () => {
    const changes = { "horses[0].girthed.bridgeNear": 9, "horses[0].girthed.bridgeOff": 9 };
    expect(cautionsOf({ ...changes, "saddle.standing.othersWearIt": "yes" })).toContain("work-shared-panel");
    expect(cautionsOf(changes)).not.toContain("work-shared-panel");
  });
  it("a polymer head whose warmth nobody looked at", () => {
    expect(cautionsOf({ ...PLATE, "saddle.build.treeTemperature": "not-looked" }, plates)).toContain(
      "work-polymer-cold",
    );
    expect(cautionsOf(PLATE, plates)).not.toContain("work-polymer-cold");
  });
});
