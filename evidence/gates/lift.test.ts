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
