import fc from "fast-check";
import { expect, test } from "vitest";
import { buildBack, buildFront, isLacking } from "../../core/src/shape/back.ts";
import { horseSchema } from "../../core/src/survey/horse.ts";
import { propertySeed } from "../number/seed.ts";
import { modelHorse } from "./model-back.ts";

/* Whatever line the survey lets through, shape answers with numbers or with the name of a reading: no crash, no NaN. */
const seed = propertySeed("any trace");
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const side = fc.array(fc.tuple(within(1, 30), within(-25, 40)), { minLength: 6, maxLength: 60 });

/** One side, outward from the top: steps of a length, each turned down or up from the one before; it may double back. */
function outward(steps: readonly (readonly [number, number])[]): [number, number][] {
  let [u, z, heading] = [0, 0, 10];
  return steps.map(([length, turn]): [number, number] => {
    heading = Math.min(140, Math.max(-20, heading + turn));
    u += length * Math.cos((heading * Math.PI) / 180);
    z -= length * Math.sin((heading * Math.PI) / 180);
    return [u, z];
  });
}

const lineOf = (near: [number, number][], off: [number, number][]): [number, number][] => [
  ...near.map(([u, z]): [number, number] => [-u, z]).reverse(),
  [0, 0],
  ...off,
];

test("any line that the survey lets through", () => {
  let seen = 0;
  fc.assert(
    fc.property(side, side, within(-5, 5), (near, off, deviation) => {
      const points = lineOf(outward(near), outward(off));
      const traces = (["front", "mid", "rear"] as const).map((station, i) => ({
        station,
        behindFront: 190 * i,
        points,
      }));
      const read = horseSchema.safeParse({ name: "any", traces, profile: modelHorse().profile });
      if (!read.success) return;
      seen += 1;
      const section = buildFront(read.data, "cold");
      const whole = buildBack(read.data, "cold");
      if (isLacking(section) || isLacking(whole)) {
        expect("lacking" in section || "lacking" in whole).toBe(true);
        return;
      }
      const deviations = {
        "trace.front.cold.widthNear.mm": deviation,
        "flexible-curve.tilt.rad": deviation / 100,
      };
      for (const which of ["near", "off"] as const) {
        expect(Number.isFinite(section.faceAngleRad(which, 40, 120, deviations))).toBe(true);
        const width = section.halfWidthMm(which, 60, deviations);
        expect(width === undefined || Number.isFinite(width)).toBe(true);
      }
      const one = () => new Float64Array(1).fill(Number.NaN);
      const out = { z: one(), zx: one(), zy: one(), zxx: one(), zxy: one(), zyy: one() };
      whole.surface(deviations)(1, Float64Array.of(100), Float64Array.of(-90), out);
      for (const values of Object.values(out)) expect(Number.isFinite(values[0])).toBe(true);
      expect(Number.isFinite(whole.loftErrorMm)).toBe(true);
    }),
    { seed, numRuns: 120 },
  );
  expect(seen).toBeGreaterThan(20);
});

test("2,000 points with nine repeats are built, not refused", () => {
  const dense = Array.from({ length: 2000 }, (_, i): [number, number] => {
    const y = -170 + (340 * i) / 1999;
    return [y, -0.8 * (Math.sqrt(y * y + 600) - Math.sqrt(600))];
  });
  const horse = horseSchema.parse({
    name: "dense",
    traces: [{ station: "front", points: dense, repeats: Array.from({ length: 9 }, () => dense) }],
  });
  const section = buildFront(horse, "cold");
  if (isLacking(section)) throw new Error(section.lacking.join(" "));
  expect(section.faceAngleRad("near", 60, 120, {})).toBeCloseTo(
    Math.atan((0.8 * (Math.sqrt(15000) - Math.sqrt(4200))) / 60),
    1,
  );
});
