import { conduct, type Face } from "@treewright/core/engine/heat/index.ts";
import { oneSidedHeating } from "@treewright/core/reach/heat/one-sided.ts";
import fc from "fast-check";
import { expect, test } from "vitest";
import { propertySeed } from "../number/seed.ts";

const SEED = propertySeed("heat from one side", 62);

test("no head of the stated range has a window, whatever it is told to be", () => {
  const whole = oneSidedHeating(undefined);
  console.log(whole.says);
  expect(whole.window).toBe(false);
  expect(whole.biot.lo).toBeGreaterThan(0.08);
  for (let thicknessMm = 5; thicknessMm <= 14; thicknessMm += 0.5) {
    const found = oneSidedHeating(thicknessMm);
    expect(found.window).toBe(false);
    expect(found.hotterByK.lo).toBeGreaterThan(10);
  }
});

test("a skin so thin that the air does not matter has one: the gate is not simply shut", () => {
  expect(oneSidedHeating(0.3).window).toBe(true);
});

test("a thicker head is never more even", () => {
  const thickness = fc.double({ min: 0.2, max: 30, noNaN: true });
  fc.assert(
    fc.property(thickness, thickness, (a, b) => {
      const [thin, thick] = [oneSidedHeating(Math.min(a, b)), oneSidedHeating(Math.max(a, b))];
      expect(thick.hotterByK.lo).toBeGreaterThanOrEqual(thin.hotterByK.lo - 1e-9);
      expect(thick.hotterByK.hi).toBeGreaterThanOrEqual(thin.hotterByK.hi - 1e-9);
      if (thick.window) expect(thin.window).toBe(true);
    }),
    { seed: SEED, numRuns: 300 },
  );
});

test("waiting does not help: on the way up the faces are further apart than in the end", () => {
  const slab = { thicknessMm: 8, conductivityWmK: 0.25, densityKgM3: 1130, heatJKgK: 1700 };
  const front: Face = { kind: "held", temperatureC: 215 };
  const back: Face = { kind: "film", filmWm2K: 10, airC: 20 };
  const steadyK = 215 - 167.727;
  for (const { frontC, backC } of conduct(
    { slab, startC: 20, front, back, cells: 40, stepS: 5 },
    [60, 300, 900],
  ))
    expect(frontC - backC).toBeGreaterThan(steadyK - 0.01);
});

test("heated alike from both sides the core comes within 5 K in minutes", () => {
  const minutes = [6, 10].map((thicknessMm) => {
    const slab = { thicknessMm, conductivityWmK: 0.25, densityKgM3: 1130, heatJKgK: 1700 };
    const hot: Face = { kind: "film", filmWm2K: 60, airC: 215 };
    const times = Array.from({ length: 120 }, (_, i) => (i + 1) * 15);
    const found = conduct({ slab, startC: 20, front: hot, back: hot, cells: 40, stepS: 2.5 }, times);
    const ready = found.find(({ frontC, coreC }) => coreC > 195 && Math.abs(frontC - coreC) < 5);
    return (ready?.timeS ?? Number.NaN) / 60;
  });
  console.log(
    `from both sides, air of 215 C blown at 60 W/m2K: ${minutes.join(" and ")} min for 6 and 10 mm`,
  );
  for (const time of minutes) expect(time).toBeGreaterThan(4);
  for (const time of minutes) expect(time).toBeLessThan(20);
});
