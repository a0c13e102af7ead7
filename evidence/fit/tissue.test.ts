import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ASSUMED_LOADS } from "../../core/src/fit/assumed-loads.ts";
import { MESHES } from "../../core/src/fit/panel-cells.ts";
import { problemOf } from "../../core/src/fit/problem.ts";
import { restOf } from "../../core/src/fit/rest.ts";
import { drawDeviations } from "../../core/src/shape/draw.ts";
import { propertySeed } from "../number/seed.ts";
import { loadsFor, pressedFor, problemFor, restFor, sittingFor, TREE } from "./model-loads.ts";

const seed = propertySeed("tissue", 20310412);
const ZONES = ["withers", "blade", "muscle", "loin"] as const;
const all = (times: number, deepMm: number) =>
  Object.fromEntries(
    ZONES.flatMap((zone) => [
      [`tissue.${zone}.times.1`, times - 1],
      [`tissue.${zone}.depth.mm`, deepMm - 40],
    ]),
  );

/** Zones and ridge. That a horse's back is so, no test can see: its stiffness is assumed. */
describe("four tissues", () => {
  test("all alike they are one tissue, to the last digit, whatever its stiffness", () => {
    const sitting = sittingFor({});
    const one = restOf({ ...sitting, loads: undefined }, MESHES.sweep).pressed();
    expect({ ...pressedFor({}), field: 0 }).toEqual({ ...one, field: 0 });
    const common = { "tissue.modulus.MPa": 0.06 };
    const twice = restOf(
      { ...sitting, loads: undefined, deviations: { ...sitting.deviations, ...common } },
      MESHES.sweep,
    ).pressed();
    const zoned = pressedFor({}, all(2, 40));
    if (!twice.ok) throw new Error(twice.why);
    expect(zoned.heaveMm).toBeCloseTo(twice.heaveMm, 9);
    expect(zoned.thirds[0]?.meanKPa).toBeCloseTo(twice.thirds[0]?.meanKPa ?? 0, 9);
  });
  test("half as deep is twice as stiff: the same numbers", () => {
    const [stiff, thin] = [pressedFor({}, all(2, 40)), pressedFor({}, all(1, 20))];
    expect(thin.heaveMm).toBeCloseTo(stiff.heaveMm, 9);
  });
  test("any draw of zones rests, stably and in balance, or says why it does not (seed printed)", () => {
    const { uncertain } = loadsFor({});
    let rests = 0;
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), (index) => {
        const { rest } = restFor({}, drawDeviations(uncertain, seed, index), MESHES.draw);
        if (!rest.ok) return;
        rests += 1;
        expect(rest.smallestEigenvalue).toBeGreaterThan(0);
      }),
      { seed, numRuns: 60 },
    );
    expect(rests).toBeGreaterThan(50);
  });
  test("each lies where it should, and changes without a jump", () => {
    const values = { withers: 2, blade: 1.5, muscle: 0.8, loin: 0.6 };
    const deviations = Object.fromEntries(
      Object.entries(values).map(([zone, times]) => [`tissue.${zone}.times.1`, times - 1]),
    );
    const horse = {
      girthed: { pointBehindBladeNear: -40, pointBehindBladeOff: -40 },
      standing: { usableLengthNear: 380, usableLengthOff: 380 },
    };
    const { cells, law } = problemFor({ horse }, deviations, MESHES.fine);
    const times = (near: (i: number) => boolean) => {
      const found: number[] = [];
      for (let i = 0; i < cells.n; i++) if (near(i)) found.push((law.lowerModulus[i] ?? 0) / 0.06);
      return found;
    };
    const [x, out] = [(i: number) => cells.x[i] ?? 0, (i: number) => Math.abs(cells.y[i] ?? 0)];
    // The blade's edge lies 40 mm behind the points here, its border 20 mm each way.
    expect(new Set(times((i) => x(i) < 18).map((one) => one.toFixed(6)))).toEqual(new Set(["1.500000"]));
    expect(times((i) => x(i) > 62 && x(i) < 98 && out(i) < 48)).not.toHaveLength(0);
    for (const one of times((i) => x(i) > 62 && x(i) < 98 && out(i) < 48)) expect(one).toBeCloseTo(2, 6);
    for (const one of times((i) => x(i) > 145 && x(i) < 355)) expect(one).toBeCloseTo(0.8, 6);
    for (const one of times((i) => x(i) > 402)) expect(one).toBeCloseTo(0.6, 6);
    // Neighbouring rows of the fine mesh, 5 mm apart over a border of 40: never a quarter of the step.
    for (let i = MESHES.fine.nv; i < cells.n / 2; i++) {
      const apart = Math.abs((law.lowerModulus[i] ?? 0) - (law.lowerModulus[i - MESHES.fine.nv] ?? 0));
      expect(apart / 0.06).toBeLessThan(0.25);
    }
  });
  test("a saddle that lies further back has more of it over the loin, less over the blade", () => {
    const stiff = { "tissue.loin.times.1": 1, "tissue.blade.times.1": 2, "tissue.withers.times.1": 0 };
    const horse = {
      girthed: { pointBehindBladeNear: -40, pointBehindBladeOff: -40 },
      standing: { usableLengthNear: 380, usableLengthOff: 380 },
    };
    const over = (slideMm: number) => {
      const { cells, law } = problemFor({ horse }, { ...stiff, "placement.mm": slideMm }, MESHES.fine);
      const part = (times: number) => {
        let n = 0;
        for (let i = 0; i < cells.n; i++)
          if (Math.abs((law.lowerModulus[i] ?? 0) / 0.06 - times) < 1e-6) n += 1;
        return n / cells.n;
      };
      return { blade: part(3), loin: part(2) };
    };
    const [ahead, back] = [over(-15), over(15)];
    expect(back.loin).toBeGreaterThan(ahead.loin + 0.04);
    expect(back.blade).toBeLessThan(ahead.blade - 0.04);
  });
  test("where blade and last rib were read they are not drawn; else they are", () => {
    const drawn = (horse: object) => loadsFor({ horse }).uncertain.map(({ id }) => id);
    const [none, both] = [
      drawn({}),
      drawn({
        girthed: { pointBehindBladeNear: -40, pointBehindBladeOff: -40 },
        standing: { usableLengthNear: 380, usableLengthOff: 380 },
      }),
    ];
    const guessed = none.filter((id) => !both.includes(id));
    expect(guessed).toEqual([ASSUMED_LOADS.bladeEdgeMm.id, ASSUMED_LOADS.lastRibMm.id]);
  });
  test("stiff beside the withers, the head stands higher", () => {
    const headUp = (times: number) => pressedFor({}, { "tissue.withers.times.1": times - 1 }).headUpRad;
    expect(headUp(2)).toBeGreaterThan(headUp(1) + 0.002);
    expect(headUp(1)).toBeGreaterThan(headUp(0.6) + 0.002);
  });
});

describe("the ridge", () => {
  const wide = { horse: { standing: { ridgeFront: 100, ridgeMid: 100, ridgeRear: 100 } } };
  test("a channel clear of it: nothing touches; panels over it touch and are told so", () => {
    expect(pressedFor({}).ridgeCm2).toBe(0);
    const touching = pressedFor(wide);
    expect(touching.ridgeCm2).toBeGreaterThan(10);
    for (const gait of restFor(wide).ridden().gaits) if (gait.ok) expect(gait.ridgeCm2).toBeGreaterThan(0);
  });
  test("between the stations where it was read it is as wide as a straight line says, beyond them as wide as there", () => {
    const read = { ridgeFront: 90, ridgeMid: 60, ridgeRear: 100 };
    const { cells, onRidge } = problemOf(sittingFor({ horse: { standing: read } }), MESHES.fine);
    const { front, mid, rear } = TREE.stationsMm;
    const half = (x: number) => {
      if (x <= front) return 45;
      if (x >= rear) return 50;
      return x <= mid ? 45 - (15 * (x - front)) / (mid - front) : 30 + (20 * (x - mid)) / (rear - mid);
    };
    let touched = 0;
    for (let i = 0; i < cells.n; i++) {
      const within = Math.abs(cells.y[i] ?? 0) < half(cells.x[i] ?? 0);
      expect([cells.x[i], cells.y[i], onRidge[i]]).toEqual([cells.x[i], cells.y[i], within ? 1 : 0]);
      touched += within ? 1 : 0;
    }
    expect(touched).toBeGreaterThan(50);
    expect(touched).toBeLessThan(cells.n / 2);
  });
  test("its stiffness is that of skin on bone, within the ridge and nowhere else", () => {
    const sitting = sittingFor(wide);
    const { cells, law, onRidge } = problemOf(sitting, MESHES.sweep);
    const { boneModulusMPa, boneDeepMm } = ASSUMED_LOADS;
    for (let i = 0; i < cells.n; i++) {
      const within = Math.abs(cells.y[i] ?? 0) < 50;
      expect(onRidge[i]).toBe(within ? 1 : 0);
      expect([law.lowerModulus[i], law.lowerThickness[i]]).toEqual(
        within ? [boneModulusMPa.base, boneDeepMm.base] : [0.06, 40],
      );
    }
    expect(TREE.stationsMm.front).toBeDefined();
  });
});
