import { settle } from "@treewright/core/engine/contact/settle.ts";
import fc from "fast-check";
import { expect, test } from "vitest";
import { restPlainly } from "./plainly.ts";
import { draws, problemOf, SEED } from "./random-case.ts";

// Not seen here: a formula that was misread in the same way twice; for that there are the model cases.
test("a second program, written from the formulas alone, finds the same rest", () => {
  let compared = 0;
  const property = fc.property(draws, (draw) => {
    const rest = settle(problemOf(draw));
    if (!rest.ok) return;
    const plain = restPlainly(draw);
    compared++;
    const { heave, pitch, roll } = rest.pose;
    expect(Math.abs(heave - plain.pose[0])).toBeLessThan(1e-5);
    expect(Math.abs(pitch - plain.pose[1])).toBeLessThan(1e-7);
    expect(Math.abs(roll - plain.pose[2])).toBeLessThan(1e-7);
    plain.pressure.forEach((p, i) => {
      expect(Math.abs(p - (rest.pressure[i] ?? Number.NaN))).toBeLessThan(1e-8);
    });
  });
  fc.assert(property, { seed: SEED, numRuns: 40, endOnFailure: true });
  expect(compared).toBeGreaterThan(20);
  console.info(`second way: ${compared} of 40 cases come to rest and agree`);
}, 60_000);

test("the comparison would see a load 5 % off", () => {
  const [draw] = fc.sample(draws, { seed: SEED, numRuns: 1 });
  if (!draw) throw new Error("no case");
  const rest = settle(problemOf({ ...draw, weightN: 1.05 * draw.weightN }));
  if (!rest.ok) throw new Error("this case rests");
  expect(Math.abs(rest.pose.heave - restPlainly(draw).pose[0])).toBeGreaterThan(0.05);
});
