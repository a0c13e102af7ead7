import { describe, expect, it } from "vitest";
import {
  BUILDS,
  HORSE_ORDERS,
  RIGHT_ORDERS,
  SOUNDNESS_ORDERS,
  STANDING_ORDERS,
  WAY_ORDERS,
  worse,
} from "../../core/src/judge/findings/orders.ts";
import { findingsOf } from "../../core/src/judge/findings.ts";
import type { Bar } from "../../core/src/judge/gates/gate.ts";
import { HORSE_BARS, isFlagged } from "../../core/src/judge/gates/horse.ts";
import { RIGHT_BARS } from "../../core/src/judge/gates/right.ts";
import { SOUNDNESS_BARS } from "../../core/src/judge/gates/soundness.ts";
import { STANDING_BARS } from "../../core/src/judge/gates/standing.ts";
import { WAY_BARS } from "../../core/src/judge/gates/way.ts";
import { type Changes, surveyWith } from "./case.ts";
import { INSERTS, WARM_BAR } from "./combination-bases.ts";
import { statesOf } from "./states.ts";

/** Bars that hold in no state, or in every one, whatever the finding. */
function idle<F>(bars: readonly Bar<F>[], states: readonly F[]): readonly string[] {
  return bars
    .filter((bar) => {
      const held = states.filter((state) => bar.when(state)).length;
      return held === 0 || held === states.length;
    })
    .map((bar) => bar.rule);
}

describe("every bar holds in some state, and in some it does not", () => {
  it("horse, right, soundness, standing, way", () => {
    expect(idle(HORSE_BARS, [...statesOf(HORSE_ORDERS)])).toEqual([]);
    expect(idle(RIGHT_BARS, [...statesOf(RIGHT_ORDERS)])).toEqual([]);
    expect(idle(SOUNDNESS_BARS, [...statesOf(SOUNDNESS_ORDERS)])).toEqual([]);
    expect(idle(STANDING_BARS, [...statesOf(STANDING_ORDERS)])).toEqual([]);
    const ways = BUILDS.flatMap((build) => [...statesOf(WAY_ORDERS)].map((way) => ({ ...way, build })));
    expect(idle(WAY_BARS, ways)).toEqual([]);
  });
  it("any reaction is a flag, also one that only brings the horse back another day", () => {
    const fine = findingsOf(surveyWith({}), 0).horse;
    expect(isFlagged(fine)).toBe(false);
    for (const pain of ["mild-at-one-place", "clear-or-several", "strong"] as const)
      expect(isFlagged({ ...fine, pain })).toBe(true);
  });
  it("a word that is in no order is a fault, not a mild one", () => {
    expect(worse(["good", "bad"], "good", "bad")).toBe("bad");
    const order: readonly string[] = ["good", "bad"];
    expect(() => worse(order, "good", "ugly")).toThrow("no word of the order");
    expect(() => worse(order)).toThrow();
  });
});

const of = (changes: Changes) => findingsOf(surveyWith(changes), 0);

describe("from readings to the words of the way", () => {
  it.each([
    ["seen-bare", "looked-at"],
    ["tap", "looked-at"],
    ["owners-word", "owners-word"],
    ["not-told", "not-told"],
  ])("told by %s: %s", (toldBy, told) => {
    expect(of({ "saddle.build.toldBy": toldBy }).way.told).toBe(told);
  });
  it.each([
    ["wood", "below-15-C", "warm"],
    ["composite", "not-looked", "warm"],
    ["polymer", "15-C-and-over", "warm"],
    ["polymer", "below-15-C", "cold"],
    ["polymer", "not-looked", "not-known"],
    ["unknown", "below-15-C", "cold"],
    ["unknown", "15-C-and-over", "warm"],
  ])("%s at %s: %s", (arch, treeTemperature, warmth) => {
    const build = { "saddle.build.arch": arch, "saddle.build.treeTemperature": treeTemperature };
    expect(of(build).way.warmth).toBe(warmth);
  });
  it("how far a head was moved: by its record, or by what was measured", () => {
    const moved = (known: string, asMade: number | string) =>
      of({ "saddle.past.alterationsKnown": known, "saddle.head.asMadeSpreadTips": asMade }).way.moved;
    expect(moved("none", "not-looked")).toBe("on-record");
    expect(moved("unknown", 205)).toBe("on-record");
    expect(moved("unknown", "not-looked")).toBe("not-known");
    expect(
      of({ "saddle.past.alterationsKnown": "unknown", "saddle.head.spreadTips": "not-looked" }).way.moved,
    ).toBe("not-known");
  });
});

describe("from parts to the words of soundness", () => {
  const rider = (changes: Changes) => of(changes).soundness.riderPart;
  const other = (changes: Changes) => of(changes).soundness.otherPart;
  const BARE: Changes = {
    "saddle.looked.parts.rivets": "sound",
    "saddle.looked.parts.layers": "sound",
    "saddle.looked.parts.plates": "sound",
  };
  it.each([
    ["no", "sound"],
    ["yes", "failed-structure"],
    ["cannot-be-seen", "cannot-be-seen"],
    ["unknown", "not-looked"],
    ["not-looked", "not-looked"],
  ])("a white line, %s: %s", (found, word) => expect(rider({ "saddle.looked.whiteLine": found })).toBe(word));
  it.each([
    ["no", "sound"],
    ["yes", "failed-renewable"],
    ["cannot-be-seen", "not-looked"],
    ["unknown", "not-looked"],
  ])("a click, %s: %s", (found, word) => expect(rider({ "saddle.looked.noise": found })).toBe(word));
  it("arch, rails and deck are structure; what hangs, and what the hands tell, can be put right", () => {
    for (const part of ["head", "rails", "cantle"])
      expect(rider({ [`saddle.looked.parts.${part}`]: "failed" })).toBe("failed-structure");
    for (const place of ["parts.bars", "parts.webs", "parts.girth-straps", "squeeze", "flex", "twist"])
      expect(rider({ [`saddle.looked.${place}`]: "failed" })).toBe("failed-renewable");
  });
  it("layers count for the rider once they have failed", () => {
    expect(rider({ "saddle.looked.parts.layers": "failed" })).toBe("failed-structure");
    expect(rider({ "saddle.looked.parts.layers": "doubtful" })).toBe("sound");
  });
  it.each([
    ["no", "sound"],
    ["yes", "doubtful"],
    ["cannot-be-seen", "cannot-be-seen"],
    ["unknown", "not-looked"],
    ["not-looked", "not-looked"],
  ])("rust or must, %s: %s", (found, word) => {
    expect(other({ ...BARE, "saddle.looked.rust": found })).toBe(word);
    expect(other({ ...BARE, "saddle.looked.musty": found })).toBe(word);
  });
  it("only parts that such a tree can have are asked for", () => {
    const failed = (part: string, build: Changes) =>
      other({ ...BARE, ...build, [`saddle.looked.parts.${part}`]: "failed" }) === "failed";
    const solid = { ...WARM_BAR, "saddle.build.metal": "none" };
    const bareWood = { "saddle.build.metal": "none" };
    const asked = (build: Changes) =>
      ["panel-fixing", "layers", "plates", "rivets"].filter((part) => failed(part, build));
    expect(asked({})).toEqual(["panel-fixing", "layers", "plates", "rivets"]);
    expect(asked(WARM_BAR)).toEqual(["panel-fixing", "plates", "rivets"]);
    expect(asked(solid)).toEqual(["panel-fixing"]);
    expect(asked(bareWood)).toEqual(["panel-fixing", "layers", "rivets"]);
  });
  it("stored damp or hot is a doubt of its own", () => {
    expect(other(BARE)).toBe("sound");
    expect(other({ ...BARE, "saddle.past.storedDamp": "yes" })).toBe("doubtful");
    expect(other({ ...BARE, "saddle.past.storedHot": "yes" })).toBe("doubtful");
    expect(other({ ...BARE, "saddle.past.storedHot": "unknown" })).toBe("sound");
  });
  it("nothing is asked of plates or inserts where the head has none", () => {
    const none = { "saddle.looked.plateHome": "failed", "saddle.looked.plateBent": "yes" };
    expect(rider(none)).toBe("sound");
    expect(rider({ ...none, "saddle.build.exchange": "unknown" })).toBe("sound");
    expect(rider(INSERTS)).toBe("sound");
  });
});
