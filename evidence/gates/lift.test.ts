import { describe, expect, it } from "vitest";
import type { CaseToJudge } from "../../core/src/judge/input.ts";
import { judgeCase } from "../../core/src/judge/judge-case.ts";
import { type Changes, faces, figure, toJudge } from "./case.ts";

/*
 * Too little room at the withers alone: the front is filled, by 8 mm at the most (common practice, no source), where
 * that leaves nothing outside and at most one between. What a filled front does to the pressure is not looked at here.
 */
const LOW = "horses[0].riderUp.clearanceTop";
const SEAT = "horses[0].riderUp.seatSlope";
const lifts = (changes: Changes, more: Partial<CaseToJudge> = {}): boolean => {
  const { work } = judgeCase(toJudge(changes, more)).answers;
  const says = work.because.some(({ rule }) => rule === "fit-lift-front");
  expect(says && work.id !== "panel").toBe(false);
  return says;
};

describe("one clearance too low, all else right", () => {
  it.each([
    [30, false],
    [29, true],
    [22, true],
    [21.5, false],
    [15, false],
  ])("rider up, %d mm under limits of 30 and 40: filled %s", (mm, expected) => {
    // From 30 up it lies between, which the panel cures without a lift being named.
    expect(lifts({ [LOW]: mm })).toBe(expected);
  });
  it("in half-seat, and beside the withers, by their own limits", () => {
    expect(lifts({ "horses[0].halfSeat.clearanceTop": 12.5 })).toBe(true);
    expect(lifts({ "horses[0].halfSeat.clearanceTop": 11 })).toBe(false);
    expect(lifts({ "horses[0].girthed.clearanceNear": { read: 4, by: "ruler" } })).toBe(true);
  });
  it("two between are one low front as well, and are filled together", () => {
    expect(lifts({ [LOW]: 35, "horses[0].girthed.clearanceTop": 40 })).toBe(true);
    expect(lifts({ [LOW]: 35, "horses[0].girthed.clearanceTop": 36 })).toBe(true);
    expect(lifts({ [LOW]: 31, "horses[0].girthed.clearanceTop": 36 })).toBe(false);
  });
  it("a bridge beside it, or rails that are off, are no low front", () => {
    const bridge = { "horses[0].girthed.bridgeNear": 14, "horses[0].girthed.bridgeOff": 14 };
    expect(lifts({ [LOW]: 26, ...bridge })).toBe(false);
    expect(lifts({ [LOW]: 26 }, { computedToday: faces(0, 0, 6) })).toBe(false);
    const beside = { "horses[0].girthed.clearanceNear": { read: 5, by: "ruler" } };
    expect(lifts(beside)).toBe(true);
    // Lifted wholly inside, and the one between is the head's own.
    expect(lifts(beside, { computedToday: faces(3, 0) })).toBe(false);
  });
  it("what today's head needs of fill is taken from what is left to lift", () => {
    expect(lifts({ [LOW]: 26 }, { fillMm: { near: 4, off: 0 } })).toBe(true);
    expect(lifts({ [LOW]: 26 }, { fillMm: { near: 0, off: 4.5 } })).toBe(false);
    expect(lifts({ [LOW]: 26 }, { fillMm: { near: undefined, off: 0 } })).toBe(false);
  });
  it("two that stay between after any lift are no whole", () => {
    expect(lifts({ [LOW]: 28, "horses[0].girthed.clearanceTop": 28 })).toBe(false);
    expect(lifts({ [LOW]: 28, "horses[0].girthed.clearanceTop": 40 })).toBe(true);
  });
  it("a seat that the lift tips out of its limit is one between too many", () => {
    // 8 mm over a panel of 430 mm are 1.07 degrees.
    expect(lifts({ [LOW]: 22.2, [SEAT]: 0.9 })).toBe(false);
    expect(lifts({ [LOW]: 22.2, [SEAT]: 0.3 })).toBe(true);
    expect(lifts({ [LOW]: 22.2, [SEAT]: -1 })).toBe(true);
  });
  it("not where the head itself is off, the panel's length was not read, or it stands too high", () => {
    expect(lifts({ [LOW]: 26 }, { computedToday: faces(3) })).toBe(false);
    expect(lifts({ [LOW]: 26 }, { computedToday: [...faces(0), figure("fill", "near", 2)] })).toBe(true);
    expect(lifts({ [LOW]: 26, "saddle.bearing.panelEnd": "not-looked" })).toBe(false);
    expect(lifts({ [LOW]: 84 })).toBe(false);
  });
});
