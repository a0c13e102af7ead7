import { describe, expect, it } from "vitest";
import { type Breakable, changed, flagsIn, problemsIn } from "./cases.ts";

function flags(change: (file: Breakable) => void): string[] {
  const read = changed(change);
  expect(problemsIn(read)).toEqual([]);
  return flagsIn(read).map(({ where, says }) => `${where}: ${says}`);
}
/** The one flag of a case with one thing to look at again. */
function only(change: (file: Breakable) => void): string {
  const found = flags(change);
  expect(found).toHaveLength(1);
  return found[0] ?? "";
}
const head = (change: (head: Breakable) => void) => only((file) => change(file.saddle.head));
const horse = (change: (horse: Breakable) => void) => only((file) => change(file.horses[0]));
const moved = (points: number[][], by: number) => points.map(([y = 0, z = 0]) => [y + by, z]);
/** Wider on the near side by so many mm at every depth, the top left where it is. */
const fuller = (points: number[][], near: number, off: number) =>
  points.map(([y = 0, z = 0]) => [y + (y < -20 ? -near : y > 20 ? off : 0), z]);

describe("the head is looked at again when", () => {
  it("its face is not said", () =>
    expect(head((one) => (one.face = "not-said"))).toContain("saddle.head.face"));
  it("the bearing's face is not said", () =>
    expect(only((file) => (file.saddle.bearing.face = "not-said"))).toContain("saddle.bearing.face"));
  it("it is wider above than at its tips", () =>
    expect(head((one) => (one.spreadUpper = 215))).toContain("no more than at the upper level (215)"));
  it("the upper level is no higher than the tips", () =>
    expect(head((one) => (one.upperBelowCrown = 96))).toContain("lies no higher"));
  it("an angle was read whole instead of halved", () => {
    const found = head((one) => Object.assign(one, { halfAngleNear: 70, halfAngleOff: 70 }));
    expect(found).toContain("is an angle the whole one instead of the half");
  });
  it("its angles make a spread 30 mm from the one read", () => {
    const found = head((one) => Object.assign(one, { halfAngleNear: 48, halfAngleOff: 48.5 }));
    expect(found).toContain("half-angles, crown radius and depth make about");
  });
  it("the half-angles stand apart", () =>
    expect(head((one) => (one.halfAngleOff = 47))).toContain("stand 3 deg apart"));
  it("the stations of the bearing are exchanged", () =>
    expect(only((file) => (file.saddle.bearing.mid.behindFront = 395))).toContain(
      "do not follow each other",
    ));

  it("but not for half a degree, nor for a spread within what two angles can say", () => {
    expect(
      flags((file) =>
        Object.assign(file.saddle.head, {
          halfAngleNear: 45,
          halfAngleOff: 44,
          spreadTips: 212,
          asMadeSpreadTips: 212,
        }),
      ),
    ).toEqual([]);
  });
});

describe("a trace is looked at again when", () => {
  it("its station lies before an earlier one", () =>
    expect(horse((one) => (one.traces[1].behindFront = -5))).toContain("traces[1].behindFront"));
  it("one side is much wider", () =>
    expect(horse((one) => (one.traces[0].points = moved(one.traces[0].points, 6)))).toContain(
      "the off side is 11 mm wider",
    ));
  it("it is mirrored among others", () => {
    const found = horse((one) => {
      one.traces[0].points = fuller(one.traces[0].points, 4, -4);
      one.traces[1].points = fuller(one.traces[1].points, -4, 4);
    });
    expect(found).toContain("is one of them mirrored?");
  });
  it("the hollow is on the full side", () => {
    const found = horse((one) => {
      one.traces[0].points = fuller(one.traces[0].points, 4, -4);
      Object.assign(one.standing, { hollowNear: 9, hollowOff: 0 });
    });
    expect(found).toContain("are near and off exchanged?");
  });
  it("it is called cold right after work", () =>
    expect(horse((one) => (one.traces[0].minutesSinceWork = "5 min"))).toContain("5 min after work"));
  it("it is a second one of its station", () => {
    expect(
      horse((one) => one.traces.push({ ...one.traces[0], points: fuller(one.traces[0].points, 1, 1) })),
    ).toContain("belongs in the repeats");
  });
});

describe("readings are looked at again when", () => {
  it("clearance grows under load", () => {
    // 5 mm more than girthed; 4 can be two rulers.
    expect(horse((one) => (one.riderUp.clearanceTop = 55))).toContain("riderUp.clearanceTop");
    expect(flags((file) => (file.horses[0].riderUp.clearanceTop = 54))).toEqual([]);
    expect(flags((file) => (file.horses[0].girthed.clearanceTop = 58))).toEqual([]);
  });
  it("clearance at the two sides differs much", () => {
    const found = horse((one) => {
      one.laidOn.clearanceNear = 27;
      one.girthed.clearanceNear = 29;
    });
    expect(found).toContain("Is the saddle straight?");
  });
  it("inches and millimetres are mixed", () => {
    const found = only((file) => (file.saddle.lines.diagonalOff = "17 11/16 in"));
    expect(found).toContain("saddle.lines.diagonalOff");
    expect(found).toContain("1 in inches");
  });
  it("repeats lie far apart", () =>
    expect(only((file) => (file.saddle.lines.diagonalOff = { read: [440, 465] }))).toContain(
      "the repeats lie 25 mm apart (440, 465)",
    ));
});
