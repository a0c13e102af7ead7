import type { CaseToJudge } from "../../core/src/judge/input.ts";
import type { WorkAnswer } from "../../core/src/terms/answers.ts";
import { type Changes, candidate, faces, sweep } from "./case.ts";
import { heat, INSERTS, PLATE, positions, SOLID } from "./combination-bases.ts";

/** A head 4 mm a side too narrow by the template, tight at the tips under the hand. */
export const NARROW: Changes = {
  "horses[0].template": { nearTop: 0, nearMiddle: -1.5, nearTip: -3, offTop: 0, offMiddle: -1.5, offTip: -3 },
  "horses[0].girthed.handNear": "tight-at-tip",
  "horses[0].girthed.handOff": "tight-at-tip",
};
const WIDE: Changes = {
  "horses[0].template": { nearTop: 0, nearMiddle: 2, nearTip: 4, offTop: 0, offMiddle: 2, offTip: 4 },
  "horses[0].girthed.handNear": "tight-at-top",
  "horses[0].girthed.handOff": "tight-at-top",
};
export const narrow = (more: Partial<CaseToJudge> = {}): Partial<CaseToJudge> => ({
  computedToday: faces(5.5),
  candidates: sweep("press", 2.4).map((one) => ({ ...one, after: faces(2.4 - 0.3 * one.setting.changeMm) })),
  fillMm: { near: 11, off: 11 },
  ...more,
});
/** One case at least for each id of the work answer. */
export const CASES: readonly [WorkAnswer, string, Changes, Partial<CaseToJudge>][] = [
  ["nothing", "all inside, hands even", {}, {}],
  [
    "not-now",
    "sore to the touch under a sound saddle",
    { "horses[0].hands.last-ribs.near": { grade: 2, twice: "yes" } },
    {},
  ],
  ["leave-as-found", "in a claim", { "saddle.standing.claimOrDispute": "yes" }, {}],
  [
    "leave-as-found",
    "the owner does not agree",
    { ...NARROW, "saddle.standing.ownerConsents": "no" },
    narrow(),
  ],
  ["set-up", "stirrups a hole apart", { "rider.stirrupHolesOff": 9 }, {}],
  ["set-up", "girth 45 mm behind its groove", { "horses[0].girthed.strapLine": 137 }, {}],
  ["panel", "flat panel under a narrow head", { ...NARROW, "saddle.panel.state": "flat" }, narrow()],
  [
    "panel",
    "bridges 9 mm, head right",
    { "horses[0].girthed.bridgeNear": 9, "horses[0].girthed.bridgeOff": 9 },
    {},
  ],
  [
    "panel",
    "wasted back under a wide head",
    {
      ...WIDE,
      "horses[0].standing.hollowNear": 14,
      "horses[0].standing.hollowOff": 15,
      "horses[0].trunkUnchanged": "yes",
    },
    { computedToday: faces(-7), candidates: sweep("press", -2.4), fillMm: { near: 10, off: 11 } },
  ],
  [
    "not-now",
    "a hollow too deep to fill",
    { ...WIDE, "horses[0].standing.hollowNear": 24 },
    { computedToday: faces(-7), candidates: sweep("press", -2.4), fillMm: { near: 16, off: 11 } },
  ],
  [
    "change-plate",
    "a plate at hand fits",
    PLATE,
    { computedToday: faces(5.5), candidates: [candidate(16, "exchange", 5.5)] },
  ],
  [
    "maker",
    "no plate at hand fits",
    PLATE,
    { computedToday: faces(5.5), candidates: sweep("imagined", 5.5, { shutBy: ["no-such-plate-at-hand"] }) },
  ],
  [
    "measure-more",
    "a plate at hand would fit, its mounting unread",
    PLATE,
    {
      computedToday: faces(5.5),
      candidates: [candidate(16, "exchange", 5.5, { shutBy: ["mounting-not-read"] })],
    },
  ],
  ["change-insert", "another position fits", INSERTS, positions],
  ["alter-dressed", "young clean laminated tree, 8 mm", NARROW, narrow()],
  [
    "alter-stripped",
    "old tree, seen bare and sound",
    {
      ...NARROW,
      "saddle.past.age": 20,
      "saddle.looked.level": "bare",
      "saddle.looked.seenBy": "Isolde Marrak",
      "saddle.looked.parts.rivets": "sound",
      "saddle.looked.parts.layers": "sound",
      "saddle.looked.parts.plates": "sound",
    },
    narrow(),
  ],
  ["strip-first", "old tree, dressed", { ...NARROW, "saddle.past.age": 20 }, narrow()],
  ["strip-first", "bought without history", { ...NARROW, "saddle.past.ownedSinceNew": "no" }, narrow()],
  ["strip-first", "a horse rolled on it", { "saddle.past.incidents.rolledOn": "yes" }, {}],
  [
    "set-back",
    "closed by 8 mm last year",
    {
      ...NARROW,
      "saddle.head.asMadeSpreadTips": 213,
      "saddle.past.alterationsKnown": "listed",
      "saddle.past.alterations": [
        { date: "2030", change: -8, by: "another hand", knownHand: "yes", way: "press" },
      ],
    },
    narrow(),
  ],
  ["heat-by-maker", "solid polymer", { ...NARROW, ...SOLID }, heat],
  ["colleague", "may judge, not press", { ...NARROW, "worker.press": "no" }, narrow()],
  ["colleague", "a bar is loose", { "saddle.looked.parts.bars": "failed" }, {}],
  [
    "maker",
    "a bar is loose, warranty runs",
    {
      "saddle.looked.parts.bars": "failed",
      "saddle.standing.inWarranty": "yes",
      "saddle.standing.makerPermits": "no",
    },
    {},
  ],
  [
    "maker",
    "in warranty, not permitted",
    { ...NARROW, "saddle.standing.inWarranty": "yes", "saddle.standing.makerPermits": "no" },
    narrow(),
  ],
  [
    "other-saddle",
    "a tree for a flat back: rails 12 degrees out at every setting",
    NARROW,
    narrow({ computedToday: faces(5.5, 5.5, 12), candidates: sweep("press", 2.4, {}, 12) }),
  ],
  [
    "other-saddle",
    "on the blade with no room behind",
    {
      "horses[0].girthed.pointBehindBladeNear": 10,
      "horses[0].girthed.pointBehindBladeOff": 10,
      "horses[0].girthed.rearBeforeLastRib": 5,
    },
    {},
  ],
  ["other-saddle", "the tree is cracked", { "saddle.looked.whiteLine": "yes" }, {}],
  [
    "spent",
    "the fitting change passes the caps",
    NARROW,
    narrow({ candidates: sweep("press", 2.4, { shutBy: ["cap-path"] }) }),
  ],
  ["measure-more", "no template for a press", { ...NARROW, "horses[0].template": {} }, narrow()],
  [
    "measure-more",
    "hands even though the angles are tight",
    { ...NARROW, "horses[0].girthed.handNear": "even", "horses[0].girthed.handOff": "even" },
    narrow(),
  ],
  ["measure-more", "nobody trotted it up", { "horses[0].moving.uneven": "not-looked" }, {}],
  ["measure-more", "other horses wear it", { ...NARROW, "saddle.standing.othersWearIt": "yes" }, narrow()],
  [
    "measure-more",
    "consent not asked",
    { ...NARROW, "saddle.standing.ownerConsents": "not-asked" },
    narrow(),
  ],
];
