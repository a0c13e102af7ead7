import { describe, expect, it } from "vitest";
import type { Candidate, CaseToJudge } from "../../core/src/judge/input.ts";
import { judgeCase } from "../../core/src/judge/judge-case.ts";
import { type Changes, candidate, faces, figure, sweep, toJudge } from "./case.ts";
import { PLATE } from "./combination-bases.ts";

const plate = (changeMm: number, after: Candidate["after"]): Candidate => ({
  ...candidate(changeMm, "exchange", 0),
  after,
});
const answered = (more: Partial<CaseToJudge>, changes: Changes = PLATE) =>
  judgeCase(toJudge(changes, { computedToday: faces(5.5), ...more })).answers;

describe("the best setting", () => {
  it("the smallest worst ratio of misfit to its limit, not the smallest misfit", () => {
    // 1.2 of 2 degrees steeper is a ratio of 0.6; 1.5 of 3 flatter is 0.5.
    const { setting } = answered({ candidates: [plate(10, faces(1.2)), plate(14, faces(-1.5))] });
    expect(setting?.changeMm).toBe(14);
  });
  it("the worst over stations decides: one bad rail outweighs two good points", () => {
    const { setting } = answered({
      candidates: [plate(10, faces(0, 0, 3.9)), plate(14, faces(1.5, 1.5, 0))],
    });
    expect(setting?.changeMm).toBe(14);
  });
  it("ties go to the smaller change", () => {
    const { setting } = answered({
      candidates: [plate(14, faces(1)), plate(10, faces(1)), plate(-12, faces(1))],
    });
    expect(setting?.changeMm).toBe(10);
  });
  it("against the larger side: the smaller side's slack is filled, the mean of both is not chosen", () => {
    const toLarger = plate(12, faces(0, -5));
    const toMean = plate(6, faces(2.5, -2.5));
    const { work, setting } = answered({ candidates: [toMean, toLarger], largerSide: "near" });
    expect([work.id, setting?.changeMm, work.also]).toEqual(["change-plate", 12, ["panel"]]);
  });
  it("tight on the smaller side is never passed over", () => {
    expect(answered({ candidates: [plate(12, faces(0, 5.5))], largerSide: "near" }).work.id).toBe(
      "other-saddle",
    );
  });
  it("all inside goes before one between, and one between before two", () => {
    const inside = plate(16, faces(1.9));
    const one = plate(10, [...faces(0.1), figure("rock", "", 6)]);
    const two = plate(10, [...faces(0.1), figure("rock", "", 6), figure("channel-width", "mid", 57)]);
    expect(answered({ candidates: [one, inside] }).setting?.changeMm).toBe(16);
    expect(answered({ candidates: [one] }).work.id).toBe("change-plate");
    expect(answered({ candidates: [two] }).work.id).toBe("other-saddle");
  });
  it("a cold trace may lie between where the warm one is inside; not the other way round", () => {
    const by = (cold: number, warm: number) => [
      ...faces(cold).map((one) => ({ ...one, at: `${one.at}, cold`, temper: "cold" as const })),
      ...faces(warm).map((one) => ({ ...one, at: `${one.at}, warm`, temper: "warm" as const })),
    ];
    expect(answered({ computedToday: by(3, 1) }, {}).work.id).toBe("nothing");
    expect(answered({ computedToday: by(1, 3) }, {}).work.id).not.toBe("nothing");
    expect(answered({ computedToday: by(5.5, 1) }, {}).work.id).not.toBe("nothing");
  });
});

describe("a press", () => {
  const NARROW: Changes = {
    "horses[0].template": {
      nearTop: 0,
      nearMiddle: -1.5,
      nearTip: -3,
      offTop: 0,
      offMiddle: -1.5,
      offTip: -3,
    },
    "horses[0].girthed.handNear": "tight-at-tip",
    "horses[0].girthed.handOff": "tight-at-tip",
  };
  const press = (more: Partial<CaseToJudge>) =>
    answered({ candidates: sweep("press", 2.4), fillMm: { near: 11, off: 11 }, ...more }, NARROW);
  it("is refused one limit between, which an exchange is allowed", () => {
    const between = sweep("press", 2.4).map((one) => ({
      ...one,
      after: [...one.after, figure("rock", "", 6)],
    }));
    expect(press({ candidates: between }).work.id).toBe("other-saddle");
  });
  it("wants half of U to spare over the withers afterwards: 45.6 +/- 1 does, 45.4 +/- 1 does not", () => {
    const left = (mm: number) =>
      sweep("press", 2.4).map((one) => ({
        ...one,
        after: [...one.after, figure("clearance-girthed", "", mm)],
      }));
    expect(press({ candidates: left(45.6) }).work.id).toBe("alter-dressed");
    expect(press({ candidates: left(45.4) }).work.id).toBe("measure-more");
  });
  it("is not made for one horse where it harms another that wears the saddle", () => {
    const harms = sweep("press", 2.4).map((one) => ({
      ...one,
      others: [{ horseIndex: 1, after: faces(-9) }],
    }));
    const { work } = press({ candidates: harms });
    expect([work.id, work.because[0]?.rule]).toEqual(["other-saddle", "right-harms-another"]);
  });
  it("does not go dressed beyond 8 mm", () => {
    const wide = [candidate(12, "press", 2.4)].map((one) => ({
      ...one,
      after: [...faces(0), figure("spread-wanted", "template", 0)],
    }));
    expect(press({ candidates: wide }).work.id).toBe("strip-first");
  });
});
