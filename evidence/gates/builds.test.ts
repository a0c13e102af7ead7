import { describe, expect, it } from "vitest";
import { HORSE_ORDERS, WAY_ORDERS, type WayFindings } from "../../core/src/judge/findings/orders.ts";
import { findingsOf } from "../../core/src/judge/findings.ts";
import { pass } from "../../core/src/judge/gates/gate.ts";
import { HORSE_BARS, horseAnswer } from "../../core/src/judge/gates/horse.ts";
import { WAY_BARS } from "../../core/src/judge/gates/way.ts";
import { type Changes, surveyWith } from "./case.ts";
import { INSERTS, PLATE, WARM_BAR } from "./combination-bases.ts";
import { statesOf } from "./states.ts";

/** Findings of how a head is built and of a changing back: from readings to words, and what each word shuts. */
const of = (changes: Changes) => findingsOf(surveyWith(changes), 0);
const way = (changes: Changes) => of(changes).way;
const riderPart = (changes: Changes) => of(changes).soundness.riderPart;
const BEST: WayFindings = {
  build: "barred-polymer",
  told: "looked-at",
  moved: "on-record",
  warmth: "warm",
  fixings: "firm",
  inserts: "ready",
};
const permits = (f: Partial<WayFindings>) => pass(WAY_BARS, { ...BEST, ...f }).permits;

describe("what holds a bar", () => {
  it.each([
    ["sound", "firm"],
    ["cannot-be-seen", "firm"],
    ["not-looked", "firm"],
    ["doubtful", "not-firm"],
    ["failed", "not-firm"],
  ])("rivets %s: %s, in polymer with a bar alone", (rivets, fixings) => {
    expect(way({ ...WARM_BAR, "saddle.looked.parts.rivets": rivets }).fixings).toBe(fixings);
    expect(way({ "saddle.looked.parts.rivets": rivets }).fixings).toBe("firm");
  });
  it("shuts the press and leaves the rest", () => {
    expect(permits({})).toEqual(["ride", "set-up", "flock", "strip", "press-dressed", "press-bare"]);
    expect(permits({ fixings: "not-firm" })).toEqual(["ride", "set-up", "flock", "strip"]);
  });
});

describe("inserts", () => {
  it.each([
    [{}, "ready"],
    [{ "saddle.inserts.near": 2 }, "unlike"],
    [{ "saddle.inserts.near": 2, "saddle.inserts.grit": "yes" }, "unlike"],
    [{ "saddle.inserts.near": "not-looked" }, "not-known"],
    [{ "saddle.inserts.grit": "yes" }, "gritty"],
    [{ "saddle.inserts.grit": "cannot-be-seen" }, "not-known"],
    [{ "saddle.inserts.grit": "not-looked" }, "not-known"],
  ])("%j: %s", (changes, inserts) => expect(way({ ...INSERTS, ...changes }).inserts).toBe(inserts));
  it("of a head without them nothing is asked", () => {
    expect(way({}).inserts).toBe("ready");
    expect(way({ ...PLATE, "saddle.inserts.near": 2, "saddle.inserts.off": 1 }).inserts).toBe("ready");
  });
  it("what each state leaves of a changeable head", () => {
    const left = (inserts: WayFindings["inserts"]) => permits({ build: "insert-exchanged", inserts });
    expect(left("ready")).toEqual(["ride", "set-up", "flock", "exchange", "strip"]);
    expect(left("gritty")).toEqual(["ride", "set-up", "flock", "strip"]);
    expect(left("not-known")).toEqual(["ride", "set-up", "flock", "strip"]);
    expect(left("unlike")).toEqual(["strip"]);
  });
  it("lock and keyway carry the rider; a plate's home is asked of plates alone", () => {
    expect(riderPart(INSERTS)).toBe(riderPart({}));
    for (const part of ["lockHome", "keyway"]) {
      expect(riderPart({ ...INSERTS, [`saddle.inserts.${part}`]: "failed" })).toBe("failed-renewable");
      expect(riderPart({ ...INSERTS, [`saddle.inserts.${part}`]: "doubtful" })).toBe("doubtful");
      expect(riderPart({ ...INSERTS, [`saddle.inserts.${part}`]: "cannot-be-seen" })).toBe("not-looked");
      expect(riderPart({ ...PLATE, [`saddle.inserts.${part}`]: "failed" })).toBe(riderPart({}));
    }
    expect(riderPart({ ...INSERTS, "saddle.inserts.off": 2 })).toBe("failed-renewable");
    expect(riderPart({ ...INSERTS, "saddle.looked.plateBent": "yes" })).toBe("failed-renewable");
    expect(riderPart({ ...INSERTS, "saddle.looked.plateHome": "failed" })).toBe(riderPart({}));
    expect(riderPart({ "saddle.looked.plateHome": "failed" })).toBe(riderPart({}));
  });
});

describe("exchange, press, heat by build", () => {
  it.each([
    ["plate-exchanged", ["exchange"]],
    ["insert-exchanged", ["exchange"]],
    ["laminated-with-plates", ["press-dressed", "press-bare"]],
    ["barred-polymer", ["press-dressed", "press-bare"]],
    ["solid-polymer", []],
    ["makers-form", []],
    ["not-known", []],
  ] as const)("%s", (build, opens) => {
    const moves = ["exchange", "press-dressed", "press-bare"];
    expect(permits({ build }).filter((act) => moves.includes(act))).toEqual(opens);
  });
  it("cold shuts an exchange too, warmth not looked at a press alone", () => {
    const exchange = (warmth: WayFindings["warmth"]) =>
      permits({ build: "plate-exchanged", warmth }).includes("exchange");
    expect([exchange("warm"), exchange("not-known"), exchange("cold")]).toEqual([true, true, false]);
    expect(permits({ warmth: "not-known" })).not.toContain("press-bare");
  });
  it("no state of fixings or inserts opens an act that its best state shuts", () => {
    for (const f of statesOf(WAY_ORDERS)) {
      const best = permits({ ...f, fixings: "firm", inserts: "ready" });
      expect(permits(f).filter((act) => !best.includes(act))).toEqual([]);
    }
  });
});

describe("a back that will not stay as it is", () => {
  const shape = (changes: Changes) => of(changes).horse.shape;
  const HOLLOW = "horses[0].standing.hollowNear";
  it.each([
    [{}, "settled"],
    [{ "horses[0].history.growing": "yes" }, "changing"],
    [{ "horses[0].history.growing": "unknown" }, "not-known"],
    [{ [HOLLOW]: 12 }, "changing"],
    [{ "horses[0].standing.hollowOff": 12 }, "changing"],
    [{ [HOLLOW]: "not-looked" }, "not-known"],
    [{ "horses[0].standing.hollowOff": "not-looked" }, "not-known"],
    [{ [HOLLOW]: "not-looked", "horses[0].history.growing": "yes" }, "changing"],
    [{ [HOLLOW]: 12, "horses[0].history.growing": "unknown" }, "changing"],
    // Over 10 mm, on doubt: a ruler's U is 2.2 mm.
    [{ [HOLLOW]: { read: 7.5, by: "ruler" } }, "settled"],
    [{ [HOLLOW]: { read: 8.2, by: "ruler" } }, "changing"],
  ])("%j: %s", (changes, expected) => expect(shape(changes)).toBe(expected));
  it("shuts the press and nothing that can be undone; it is no flag", () => {
    for (const f of statesOf(HORSE_ORDERS)) {
      const settled = pass(HORSE_BARS, { ...f, shape: "settled" }).permits;
      const { permits: left } = pass(HORSE_BARS, { ...f, shape: "changing" });
      expect(settled.filter((act) => !left.includes(act) && !act.startsWith("press"))).toEqual([]);
      expect(left.some((act) => act.startsWith("press"))).toBe(false);
    }
    const fine = of({}).horse;
    expect(horseAnswer(fine)).toBe("no-reason-seen");
    expect(horseAnswer({ ...fine, shape: "changing" })).toBe("come-back");
    expect(horseAnswer({ ...fine, shape: "not-known" })).toBe("no-reason-seen");
    expect(horseAnswer({ ...fine, shape: "changing", lame: "yes" })).toBe("vet-before-riding");
    expect(horseAnswer({ ...fine, shape: "changing", otherSign: "yes" })).toBe("vet-before-altering");
    expect(horseAnswer({ ...fine, shape: "changing", lesion: "not-known" })).toBe("not-examined");
  });
});
