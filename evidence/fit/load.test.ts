import { describe, expect, test } from "vitest";
import { spreadOf } from "../../core/src/engine/quantile.ts";
import { ASSUMED, ASSUMED_UNCERTAIN, GRAVITY } from "../../core/src/fit/assumed.ts";
import { loadAtRest, massOf } from "../../core/src/fit/load.ts";
import { isLacking } from "../../core/src/shape/back.ts";
import { drawDeviations } from "../../core/src/shape/draw.ts";
import { buildTree } from "../../core/src/shape/tree.ts";
import { caseSchema } from "../../core/src/survey/case.ts";
import { modelSaddle } from "../shape/model-saddle.ts";

/** What weighs on the back, as weighed and as assumed. That the assumed is true of this rider, no test can see. */
const massFor = (rider: object) =>
  massOf(
    caseSchema.parse({
      format: "treewright-case",
      version: 3,
      title: "invented",
      visit: { date: "2031-04-02" },
      rider,
      saddle: { name: "invented" },
      horses: [{ name: "invented" }],
    }).rider,
  );
const U = (rider: object) => {
  const mass = massFor(rider);
  const uncertain = [...mass.uncertain, ...ASSUMED_UNCERTAIN];
  return spreadOf(Array.from({ length: 4000 }, (_, i) => mass.at(drawDeviations(uncertain, 9, i))));
};

describe("mass on the back", () => {
  test.each([
    [{ massDressed: 68, tackMass: 9 }, 77],
    [{ massDressed: 68 }, 76],
    [{}, 72],
    [{ tackMass: 9 }, 72],
  ])("%j: %f kg", (rider, kg) => expect(massFor(rider).at({})).toBe(kg));
  test("weighed, it is as sure as two readings of one scale: own parts by squares, the shared one twice", () => {
    // 1 kg own each, 0.5 kg shared (assumption, in the instrument records).
    expect(U({ massDressed: 68, tackMass: 9 }) / (1.96 * Math.sqrt(1 + 1 + 1))).toBeCloseTo(1, 1);
  });
  test("not weighed, it spreads over nearly all of its range, half of the draws on each side of the base", () => {
    // 2.5 % from below: 50 + 0.05 of 22; from above: 110 - 0.05 of 38.
    expect(U({}) / ((108.1 - 51.1) / 2)).toBeCloseTo(1, 1);
    expect(U({ massDressed: 68 })).toBeGreaterThan(U({ massDressed: 68, tackMass: 9 }) * 0.9);
  });
  test("weighs straight down on a point of the seat, and both straps pull down and out alike", () => {
    const built = buildTree(modelSaddle());
    if (isLacking(built)) throw new Error("lacking");
    const tree = built.at({});
    const mass = massFor({ massDressed: 68, tackMass: 9 });
    const { weightN, at, turnsWithBody, pulls } = loadAtRest({ tree, mass, deviations: {} });
    expect(weightN).toBeCloseTo(77 * GRAVITY, 9);
    expect([at.x, at.y, at.z]).toEqual([0.48 * 430, 0, 300]);
    expect(turnsWithBody).toBe(true);
    const [near, off] = pulls;
    expect([near?.at.x, off?.at.x]).toEqual([120, 122]);
    expect([near?.at.y, off?.at.y]).toEqual([-150, 150]);
    expect([near?.force.y, off?.force.y]).toEqual([-30, 30]);
    expect([near?.force.z, off?.force.z]).toEqual([-ASSUMED.girthN.base, -100]);
  });
});
