import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { averageCurves } from "../../core/src/engine/curve/average.ts";
import { closest } from "../../core/src/engine/curve/closest.ts";
import { crossings } from "../../core/src/engine/curve/crossings.ts";
import { curvatureAt, pointAt, resample, tangentAt } from "../../core/src/engine/curve/curve.ts";
import { farthestMiss } from "../../core/src/engine/curve/hausdorff.ts";
import type { Point } from "../../core/src/engine/curve/point.ts";
import { move, rigidFit } from "../../core/src/engine/curve/rigid.ts";
import { smoothCurve } from "../../core/src/engine/curve/smooth-curve.ts";
import { quantile, spreadOf } from "../../core/src/engine/quantile.ts";
import { drawNormal } from "../../core/src/engine/random.ts";

const SEED = 20261125;
const holds = (property: fc.IProperty<[number, number, number]> | fc.IProperty<[number]>) => {
  try {
    fc.assert(property as fc.IProperty<unknown>, { seed: SEED, numRuns: 60 });
  } catch (failed) {
    throw new Error(`seed ${SEED}: ${String(failed)}`);
  }
};

/** Three quarters of a circle: it doubles back, so no function of y could hold it. */
const circle = (radius: number, n: number): Point[] =>
  Array.from({ length: n + 1 }, (_, i): Point => {
    const turn = -Math.PI * 0.75 + (1.5 * Math.PI * i) / n;
    return [radius * Math.sin(turn), radius * Math.cos(turn)];
  });
const rough = (points: readonly Point[], sd: number, seed: number): Point[] =>
  points.map(([y, z], i): Point => [y + sd * drawNormal(seed, i, "y"), z + sd * drawNormal(seed, i, "z")]);
/** A lopsided curve with no symmetry of its own. */
const lopsided = (n: number): Point[] =>
  Array.from({ length: n + 1 }, (_, i): Point => {
    const y = -150 + (320 * i) / n;
    return [y, -0.9 * (Math.sqrt(y * y + 400) - 20) - (y > 0 ? 0.0006 * y * y : 0)];
  });

describe("a smooth curve", () => {
  test("holds a circle that doubles back: length, curvature and tangent", () => {
    const curve = smoothCurve(circle(120, 90), 0);
    expect(curve.length).toBeCloseTo(120 * 1.5 * Math.PI, 0);
    for (const part of [0.2, 0.5, 0.8])
      expect(curvatureAt(curve, part * curve.length)).toBeCloseTo(-1 / 120, 5);
    expect(tangentAt(curve, curve.length / 2)[0]).toBeCloseTo(1, 6);
  });
  test("is not flattened by a stated uncertainty that the points do not have", () => {
    const curve = smoothCurve(circle(120, 90), 1);
    const miss = Math.max(...resample(curve, 60).map(([y, z]) => Math.abs(Math.sqrt(y * y + z * z) - 120)));
    expect(miss).toBeLessThan(0.15);
  });
  test.each([90, 400, 2000])(
    "takes most of the roughness off %i points without shortening the curve",
    (n) => {
      const curve = smoothCurve(rough(circle(120, n), 1, 7), 1);
      const misses = resample(curve, 200).map(([y, z]) => Math.sqrt(y * y + z * z) - 120);
      const rms = Math.sqrt(misses.reduce((sum, one) => sum + one * one, 0) / misses.length);
      expect(rms).toBeLessThan(n === 90 ? 0.75 : 0.45);
      expect(Math.abs(curve.length / (180 * Math.PI) - 1)).toBeLessThan(0.01);
    },
  );
  test("takes a tenth off a wave of 45 mm when nothing else would stop it, and no more", () => {
    // A wave of 1 mm whose points are said to be known to 5 mm: only the wave that is kept stops the smoothing.
    const wave = Array.from({ length: 401 }, (_, i): Point => [2 * i, Math.cos((2 * Math.PI * 2 * i) / 45)]);
    const middle = resample(smoothCurve(wave, 5), 4001).filter(([y]) => y > 350 && y < 450);
    const height = Math.max(...middle.map(([, z]) => z));
    expect(height).toBeGreaterThan(0.895);
    expect(height).toBeLessThan(0.905);
  });
  test("goes through its points when they are exact", () => {
    const points = lopsided(40);
    const curve = smoothCurve(points, 0);
    expect(farthestMiss(points, resample(curve, 8001))).toBeLessThan(0.05);
  });
});

describe("places on a curve", () => {
  const curve = smoothCurve(circle(100, 200), 0);
  test("lines are crossed where the circle crosses them, twice where it doubles back", () => {
    const places = crossings(curve, "y", 80).map((s) => pointAt(curve, s)[1]);
    expect(places).toHaveLength(2);
    expect(places[0]).toBeCloseTo(60, 3);
    expect(places[1]).toBeCloseTo(-60, 3);
    expect(crossings(curve, "z", 101)).toEqual([]);
  });
  test("the nearest place lies on the line to the centre", () => {
    const found = closest(curve, [90, 120]);
    expect(found.distance).toBeCloseTo(50, 4);
    expect(found.point[0]).toBeCloseTo(60, 3);
    expect(closest(curve, [0, -300]).atEnd).toBe(true);
  });
});

describe("repeats laid over each other", () => {
  const moved = (turn: number, a: number, b: number) => {
    const motion = { cos: Math.cos(turn), sin: Math.sin(turn), shift: [a, b] as const };
    return lopsided(80).map((point) => move(motion, point));
  };
  test("a moved copy is found exactly", () => {
    holds(
      fc.property(
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.double({ min: -200, max: 200, noNaN: true }),
        fc.double({ min: -200, max: 200, noNaN: true }),
        (turn, a, b) => {
          const fit = rigidFit(lopsided(80), moved(turn, a, b));
          expect(Math.atan2(fit.sin, fit.cos)).toBeCloseTo(turn, 9);
          expect(Math.sqrt(fit.meanSquare)).toBeLessThan(1e-5);
          expect(fit.scale).toBeCloseTo(1, 9);
        },
      ),
    );
  });
  test("the mean of moved copies is the same curve, with no spread", () => {
    const copies = [moved(0.1, 4, -3), moved(-0.07, -2, 6)].map((points) => smoothCurve(points, 0));
    const { curve, spread } = averageCurves([smoothCurve(lopsided(80), 0), ...copies]);
    expect(spread).toBeLessThan(0.01);
    const [from, to] = [resample(curve, 81), resample(smoothCurve(lopsided(80), 0), 81)];
    expect(Math.sqrt(rigidFit(from, to).meanSquare)).toBeLessThan(0.02);
  });
  test("a mirrored copy is never taken for a moved one", () => {
    const mirror = lopsided(80).map(([y, z]): Point => [-y, z]);
    const fit = rigidFit(lopsided(80), mirror);
    expect(fit.cos * fit.cos + fit.sin * fit.sin).toBeCloseTo(1, 12);
    expect(fit.meanSquare).toBeGreaterThan(100);
  });
  test("the spread of rough repeats is the roughness that smoothing leaves, and their mean is nearer the truth", () => {
    const truth = lopsided(400);
    const one = smoothCurve(rough(lopsided(80), 1, 1), 1);
    const many = [2, 3, 4, 5, 6, 7].map((seed) => smoothCurve(rough(lopsided(80), 1, seed), 1));
    const { curve, spread } = averageCurves([one, ...many]);
    const miss = (places: readonly Point[]) => {
      const squares = places.map((place) => farthestMiss([place], truth) ** 2);
      return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
    };
    expect(spread).toBeGreaterThan(0.2);
    expect(spread).toBeLessThan(1);
    expect(miss(resample(curve, 60).slice(3, -3))).toBeLessThan(0.7 * miss(resample(one, 60).slice(3, -3)));
  });
  test("a repeat in another unit shows in its scale", () => {
    const inches = smoothCurve(
      lopsided(80).map(([y, z]): Point => [y / 25.4, z / 25.4]),
      0,
    );
    expect(averageCurves([smoothCurve(lopsided(80), 0), inches]).scales[0]).toBeCloseTo(25.4, 0);
  });
});

describe("half of the central 95 %", () => {
  test("of 0 to 1000 is 475, and the quantiles are those of type 7", () => {
    const values = Array.from({ length: 1001 }, (_, i) => i);
    expect(spreadOf(values)).toBe(475);
    expect(quantile([1, 2, 3, 4], 0.25)).toBe(1.75);
    expect(spreadOf([3])).toBe(0);
  });
  test("of normal draws is 1.96 of their standard deviation", () => {
    const values = Array.from({ length: 20000 }, (_, i) => 3 * drawNormal(SEED, i, "one"));
    expect(spreadOf(values) / 3 / 1.959964).toBeGreaterThan(0.97);
    expect(spreadOf(values) / 3 / 1.959964).toBeLessThan(1.03);
  });
});
