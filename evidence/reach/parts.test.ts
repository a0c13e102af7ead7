import { describe, expect, it } from "vitest";
import { headKind } from "../../core/src/reach/build.ts";
import { CREEP, leftAfterAWeekMm } from "../../core/src/reach/creep.ts";
import { exchangeHistory } from "../../core/src/reach/history.ts";
import { mountingChecks, sameMounting } from "../../core/src/reach/mounting.ts";
import type { SurveyedSaddle } from "../../core/src/survey/case.ts";
import { surveyWith } from "../gates/case.ts";

/* Small parts of what a head allows, worked out by hand. */

type Built = Parameters<typeof headKind>[0];
const WOOD: Built = {
  arch: "wood",
  metal: "plates",
  exchange: "none",
  movedBy: "press",
  form: "none",
  toldBy: "seen-bare",
};

describe("how a head is built", () => {
  it.each<[Partial<Built>, ReturnType<typeof headKind>]>([
    [{}, "laminated-with-plates"],
    [{ metal: "unknown" }, "not-known"],
    [{ metal: "none" }, "makers-form"],
    [{ movedBy: "heat" }, "not-known"],
    [{ movedBy: "nothing" }, "makers-form"],
    [{ movedBy: "exchange" }, "not-known"],
    [{ form: "unknown" }, "not-known"],
    [{ toldBy: "not-told" }, "not-known"],
    [{ arch: "unknown" }, "not-known"],
    [{ arch: "composite", form: "unknown" }, "makers-form"],
    [{ exchange: "plate" }, "not-known"],
    [{ exchange: "plate", movedBy: "exchange" }, "plate-exchanged"],
    [{ exchange: "insert", movedBy: "unknown" }, "insert-exchanged"],
    [{ exchange: "unknown" }, "not-known"],
    [{ arch: "polymer", metal: "bar" }, "barred-polymer"],
    [{ arch: "polymer", metal: "none", movedBy: "heat" }, "solid-polymer"],
    [{ arch: "polymer", metal: "none", movedBy: "press" }, "not-known"],
    [{ arch: "polymer", metal: "plates" }, "makers-form"],
  ])("%j: %s", (change, kind) => expect(headKind({ ...WOOD, ...change })).toBe(kind));
});

describe("what a barred head takes back within a week", () => {
  it("a fifth to two fifths, whichever way it went", () => {
    expect(CREEP.partBack).toEqual([0.2, 0.4]);
    for (const change of [10, -10]) {
      const [least, most] = leftAfterAWeekMm(change);
      expect([least, most]).toEqual([expect.closeTo(6, 9), expect.closeTo(8, 9)]);
    }
  });
});

const past = (...alterations: object[]) =>
  exchangeHistory(surveyWith({ "saddle.past.alterations": alterations }).saddle);
const once = (change: unknown, way = "exchange") => ({ date: "2026-01-01", way, change });

describe("what exchanges did to a head", () => {
  it("only exchanges, only those that were read; one that changed nothing is passed over", () => {
    expect(past()).toEqual({ reversals: 0, lastMm: undefined });
    expect(past(once(6), once(4))).toEqual({ reversals: 0, lastMm: 4 });
    expect(past(once(6), once(-4), once(3))).toEqual({ reversals: 2, lastMm: 3 });
    expect(past(once(6), once(0), once(-4), once(0))).toEqual({ reversals: 1, lastMm: -4 });
    expect(past(once(6), once(-9, "press"), once("unknown"))).toEqual({ reversals: 0, lastMm: 6 });
  });
});

describe("two mountings held against each other", () => {
  const { saddle, platesAtHand } = surveyWith({
    "saddle.mounting": { holes: 3, pitch: 25, edge: "square", thickness: 4 },
    platesAtHand: [
      { mounting: { holes: 3, pitch: 26, edge: "square", thickness: 4.5 } },
      { mounting: { holes: 4, pitch: 26.2, edge: "rounded", thickness: 4.6 } },
      {},
    ],
  });
  const bare = surveyWith({ "saddle.mounting": {} }).saddle.mounting;
  const [same, other, unread] = platesAtHand.map(({ mounting }) => mounting);
  if (!same || !other || !unread) throw new Error("three plates");
  const shown = (head: SurveyedSaddle["mounting"], plate: typeof same) =>
    mountingChecks(head, plate).map(({ what, match, notRead }) => [what, match, ...notRead].join(" "));
  it("the same within 1 mm of pitch and half a millimetre of thickness", () => {
    expect(sameMounting(saddle.mounting, same)).toBe("same");
    expect(shown(saddle.mounting, same)).toEqual(["holes same", "pitch same", "thickness same", "edge same"]);
    expect(sameMounting(saddle.mounting, other)).toBe("differs");
    expect(shown(saddle.mounting, other)).toEqual([
      "holes differs",
      "pitch differs",
      "thickness differs",
      "edge differs",
    ]);
  });
  it("what was not read on either is never the same, and is named", () => {
    const all = (...who: string[]) =>
      ["holes", "pitch", "thickness", "edge"].map((what) => [what, "cannot-tell", ...who].join(" "));
    expect(sameMounting(saddle.mounting, unread)).toBe("cannot-tell");
    expect(shown(saddle.mounting, unread)).toEqual(all("plate"));
    expect(shown(bare, same)).toEqual(all("head"));
    expect(shown(bare, unread)).toEqual(all("head", "plate"));
  });
});
