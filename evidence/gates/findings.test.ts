import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { HORSE_ORDERS, SOUNDNESS_ORDERS } from "../../core/src/judge/findings/orders.ts";
import { findingsOf } from "../../core/src/judge/findings.ts";
import { passGates, permittedBy } from "../../core/src/judge/gates.ts";
import { SEEN, SIGN } from "../../core/src/terms/knowing.ts";
import { SIDES, ZONES } from "../../core/src/terms/places.ts";
import { type Changes, surveyWith } from "./case.ts";

const of = (changes: Changes) => findingsOf(surveyWith(changes), 0);
const hands = (changes: Changes) => of(changes).horse;
const SEED = 20310412;

describe("hands on", () => {
  it("all zones quiet", () => expect(hands({})).toMatchObject({ hands: "all-zones", pain: "none" }));
  it.each(ZONES)("%s left out was not looked at", (zone) => {
    expect(hands({ [`horses[0].hands.${zone}`]: {} }).hands).toBe("not-all-zones");
  });
  it("one side of a paired zone left out was not looked at; a midline zone has one place", () => {
    expect(hands({ "horses[0].hands.loin": { near: { grade: 0 } } }).hands).toBe("not-all-zones");
    expect(hands({ "horses[0].hands.withers-top": { near: { grade: 0 } } }).hands).toBe("all-zones");
  });
  it.each([
    [1, "no", "none"],
    [1, "yes", "mild-at-one-place"],
    [1, "not-tried", "mild-at-one-place"],
    [2, "no", "mild-at-one-place"],
    [2, "yes", "clear-or-several"],
    [2, "not-tried", "clear-or-several"],
    [3, "no", "strong"],
  ] as const)("grade %d, again %s, at one place: %s", (grade, twice, pain) => {
    expect(hands({ "horses[0].hands.loin.off": { grade, twice } }).pain).toBe(pain);
  });
  it("a grade 1 that comes again at two places is no longer alone", () => {
    const twice = { grade: 1, twice: "yes" };
    expect(hands({ "horses[0].hands.loin.off": twice, "horses[0].hands.loin.near": twice }).pain).toBe(
      "clear-or-several",
    );
  });
  it("a higher grade anywhere never reads as less (seed printed)", () => {
    console.log(`seed ${SEED}`);
    const place = fc.record({
      zone: fc.constantFrom(...ZONES),
      side: fc.constantFrom(...SIDES),
      grade: fc.integer({ min: 0, max: 2 }),
    });
    const again = fc.constantFrom("yes", "no", "not-tried");
    fc.assert(
      fc.property(fc.array(fc.tuple(place, again), { maxLength: 4 }), place, again, (others, one, twice) => {
        const base = Object.fromEntries(
          others.map(([at, t]) => [`horses[0].hands.${at.zone}.${at.side}`, { grade: at.grade, twice: t }]),
        );
        const at = `horses[0].hands.${one.zone}.${one.side}`;
        const less = hands({ ...base, [at]: { grade: one.grade, twice } });
        const more = hands({ ...base, [at]: { grade: one.grade + 1, twice } });
        return HORSE_ORDERS.pain.indexOf(more.pain) >= HORSE_ORDERS.pain.indexOf(less.pain);
      }),
      { seed: SEED, numRuns: 150 },
    );
  });
});

describe("the rest of the horse", () => {
  it.each([
    ["horses[0].history.wound", "lesion"],
    ["horses[0].standing.swelling", "lesion"],
    ["horses[0].standing.openSore", "lesion"],
    ["horses[0].history.nerveSigns", "nerves"],
    ["horses[0].moving.toeDragOrStumble", "nerves"],
    ["horses[0].moving.uneven", "lame"],
    ["horses[0].standing.heat", "otherSign"],
    ["horses[0].history.suddenChange", "otherSign"],
    ["horses[0].history.fall", "otherSign"],
    ["horses[0].history.painkillers7Days", "otherSign"],
    ["horses[0].history.oneSidedMuscleLoss", "otherSign"],
    ["horses[0].history.weightFalling", "otherSign"],
    ["horses[0].history.slipsSameWay", "otherSign"],
  ] as const)("%s: yes is yes, unknown is not known", (path, finding) => {
    expect(hands({ [path]: "yes" })[finding]).toBe("yes");
    expect(hands({ [path]: "unknown" })[finding]).toBe("not-known");
    expect(hands({})[finding]).toBe("no");
  });
  it("eight ridden signs are a flag, seven are not", () => {
    expect(hands({ "horses[0].history.riddenSigns": 8 }).otherSign).toBe("yes");
    expect(hands({ "horses[0].history.riddenSigns": 7 }).otherSign).toBe("no");
  });
  it.each([
    [4, 0, "in-work"],
    [5, 5, "off-work"],
    [5, 6, "in-work"],
    [5, "unknown", "not-known"],
    ["not-asked", 6, "not-known"],
  ] as const)("%s weeks off, %s back: %s", (off, back, shape) => {
    expect(
      hands({ "horses[0].history.offWorkWeeks": off, "horses[0].history.backInWorkWeeks": back })
        .workingShape,
    ).toBe(shape);
  });
});

describe("the saddle", () => {
  const sound = (changes: Changes) => of(changes).soundness;
  it.each(["head", "rails", "cantle"] as const)("%s failed is structure", (part) => {
    expect(sound({ [`saddle.looked.parts.${part}`]: "failed" }).riderPart).toBe("failed-structure");
  });
  it.each(["bars", "webs", "girth-straps"] as const)(
    "%s failed can be renewed, and is always in reach of the eye",
    (part) => {
      expect(sound({ [`saddle.looked.parts.${part}`]: "failed" }).riderPart).toBe("failed-renewable");
      expect(sound({ [`saddle.looked.parts.${part}`]: "cannot-be-seen" }).riderPart).toBe("not-looked");
    },
  );
  it("parted layers and a white line are structure; a click is not yet a crack seen", () => {
    expect(sound({ "saddle.looked.parts.layers": "failed" }).riderPart).toBe("failed-structure");
    expect(sound({ "saddle.looked.whiteLine": "yes" }).riderPart).toBe("failed-structure");
    expect(sound({ "saddle.looked.noise": "yes" }).riderPart).toBe("failed-renewable");
  });
  it.each(["squeeze", "flex", "twist"] as const)("%s not tried leaves the tree not looked at", (test) => {
    expect(sound({ [`saddle.looked.${test}`]: "not-looked" }).riderPart).toBe("not-looked");
  });
  it("rust, must or damp are doubt", () => {
    for (const path of ["saddle.looked.rust", "saddle.looked.musty", "saddle.past.storedDamp"])
      expect(sound({ [path]: "yes" }).otherPart).toBe("doubtful");
  });
  it("worse words never read as milder ones", () => {
    const order = ["sound", "cannot-be-seen", "doubtful", "not-looked", "failed"] as const;
    expect([...order].sort()).toEqual([...SEEN].sort());
    const at = order.map((word) =>
      SOUNDNESS_ORDERS.otherPart.indexOf(sound({ "saddle.looked.parts.rivets": word }).otherPart),
    );
    expect([...at].sort((a, b) => a - b)).toEqual(at);
    const signs = SIGN.map((word) =>
      SOUNDNESS_ORDERS.riderPart.indexOf(sound({ "saddle.looked.whiteLine": word }).riderPart),
    );
    expect([...signs].sort((a, b) => a - b)).toEqual(signs);
  });
  it("bare without a name is dressed", () => {
    expect(sound({ "saddle.looked.level": "bare" }).level).toBe("dressed");
    expect(sound({ "saddle.looked.level": "bare", "saddle.looked.seenBy": "Isolde Marrak" }).level).toBe(
      "bare",
    );
  });
  it("incidents: no from an owner since new; unknown otherwise; one yes is yes", () => {
    expect(sound({}).trauma).toBe("no");
    expect(sound({ "saddle.past.ownedSinceNew": "no" }).trauma).toBe("not-known");
    expect(sound({ "saddle.past.incidents.dragged": "not-asked" }).trauma).toBe("not-known");
    expect(sound({ "saddle.past.incidents.dragged": "yes", "saddle.past.ownedSinceNew": "no" }).trauma).toBe(
      "yes",
    );
  });
  it("age: five years is young, 5.25 is not (5 %)", () => {
    expect([5, 5.25, "unknown"].map((age) => sound({ "saddle.past.age": age }).age)).toEqual([
      "to-5-years",
      "older",
      "not-known",
    ]);
  });
  it("half-angles: 2 degrees apart is not yet twisted, 2.1 is (5 %); unread is not measured", () => {
    const at = (near: unknown) =>
      sound({ "saddle.head.halfAngleNear": near, "saddle.head.halfAngleOff": 44 }).square;
    expect([at(46), at(46.1), at("not-looked")]).toEqual(["square", "off", "not-measured"]);
  });
  it("diagonals: 5 mm dressed, 3 mm bare", () => {
    const at = (off: number, more: Changes = {}) =>
      sound({ "saddle.lines.diagonalNear": 450, "saddle.lines.diagonalOff": off, ...more }).square;
    const bare = { "saddle.looked.level": "bare", "saddle.looked.seenBy": "Isolde Marrak" };
    expect([at(455), at(455.25), at(453, bare), at(453.15, bare)]).toEqual([
      "square",
      "off",
      "square",
      "off",
    ]);
  });
  it("earlier alterations: none, one known, two known, an unknown hand, a repair, heat", () => {
    const one = { date: "2030", change: 5, by: "a", knownHand: "yes", way: "press" };
    const listed = (all: unknown[]) =>
      sound({ "saddle.past.alterationsKnown": "listed", "saddle.past.alterations": all }).past;
    expect([
      sound({}).past,
      listed([one]),
      listed([one, one]),
      listed([{ ...one, knownHand: "no" }]),
      listed([]),
    ]).toEqual(["clean", "clean", "several-known", "not-known", "not-known"]);
    expect(listed([{ ...one, way: "heat" }])).toBe("repaired-or-heated");
    expect(sound({ "saddle.past.repaired": "yes" }).past).toBe("repaired-or-heated");
  });
});

describe("standing and right", () => {
  it.each([
    ["yes", 9, "taken-to-run"],
    ["no", 1, "out"],
    ["unknown", 4.9, "taken-to-run"],
    ["unknown", 5, "out"],
    ["not-asked", "unknown", "taken-to-run"],
  ] as const)("warranty %s at %s years: %s", (said, age, warranty) => {
    expect(of({ "saddle.standing.inWarranty": said, "saddle.past.age": age }).standing.warranty).toBe(
      warranty,
    );
  });
  it.each([
    ["trainee", "yes", "may"],
    ["trainee", "not-asked", "not-known"],
    ["trainee", "no", "may-not"],
    ["no", "yes", "may-not"],
    ["unknown", "yes", "not-known"],
  ] as const)("press: %s, countersigned %s: %s", (press, countersigned, may) => {
    expect(of({ "worker.press": press, "worker.countersigned": countersigned }).standing.mayPress).toBe(may);
  });
  it("an absent serial makes the record not known", () => {
    expect(of({ "saddle.standing.serial": "" }).soundness.serial).toBe("not-known");
    expect(of({ "saddle.standing.serialIsOfRecord": "no" }).soundness.serial).toBe("differs");
  });
  it("another horse in the case without a trace is not covered, unless this one is signed for", () => {
    const other = { "horses[1]": { name: "Bracken" } };
    expect(of(other).right.otherHorses).toBe("not-covered");
    expect(of({ ...other, "horses[0].onlyThisHorse": "yes" }).right.otherHorses).toBe("covered");
  });
});

describe("how the head is built", () => {
  const build = (typed: Changes) => of({ "saddle.build": { toldBy: "seen-bare", ...typed } }).way.build;
  it.each([
    [{ arch: "wood", metal: "plates", exchange: "none", movedBy: "press" }, "laminated-with-plates"],
    [{ arch: "wood", metal: "plates", exchange: "none", movedBy: "heat" }, "not-known"],
    [{ arch: "polymer", metal: "none", exchange: "none", movedBy: "heat" }, "solid-polymer"],
    [{ arch: "polymer", metal: "none", exchange: "none", movedBy: "press" }, "not-known"],
    [{ arch: "polymer", metal: "bar", exchange: "none", movedBy: "press" }, "barred-polymer"],
    [{ arch: "polymer", metal: "bar", exchange: "plate", movedBy: "exchange" }, "plate-exchanged"],
    [{ arch: "polymer", metal: "bar", exchange: "plate", movedBy: "press" }, "not-known"],
    [{ arch: "wood", metal: "plates", exchange: "insert", movedBy: "exchange" }, "insert-exchanged"],
    [{ arch: "composite", metal: "none", exchange: "none" }, "makers-form"],
    [{ arch: "wood", metal: "plates", exchange: "none", form: "side-saddle" }, "makers-form"],
    [{ arch: "wood", metal: "plates", exchange: "none", movedBy: "nothing" }, "makers-form"],
    [{}, "not-known"],
  ] as const)("%j: %s", (typed, kind) => expect(build(typed)).toBe(kind));
});

describe("the gates in a row", () => {
  it("what is permitted is what every gate permits, and every reason names its rule", () => {
    const f = of({ "worker.press": "no", "saddle.past.age": 20 });
    const gated = passGates(f);
    expect(gated.permitted).toEqual(permittedBy(Object.values(gated.passed)));
    expect(gated.shut.map((shut) => shut.rule)).toEqual(
      expect.arrayContaining(["saddle-old", "standing-may-not-press"]),
    );
    expect(gated.permitted).toEqual(["ride", "set-up", "flock", "strip"]);
  });
});
