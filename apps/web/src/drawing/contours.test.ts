import { expect, test } from "vitest";
import { area, contours as loopsOf, type Net, rimmed } from "./contours.ts";

const contours = (net: Net, level: number) => loopsOf(rimmed(net), level);

/** A cone of height 20 about the middle of a net with steps of 2 by 1. */
const cone: Net = {
  nx: 51,
  nv: 101,
  at: (i, j) => [i * 2, j],
  value: (i, j) => 20 - Math.sqrt((i * 2 - 50) ** 2 + (j - 50) ** 2),
};

test("a level of a cone is a circle of the right area", () => {
  const loops = contours(cone, 8);
  expect(loops).toHaveLength(1);
  expect(Math.abs(area(loops[0] ?? []))).toBeGreaterThan(Math.PI * 144 * 0.99);
  expect(Math.abs(area(loops[0] ?? []))).toBeLessThan(Math.PI * 144);
});

test("a hollow turns the other way than the ground around it", () => {
  const crater: Net = { ...cone, value: (i, j) => 10 - Math.abs(10 - cone.value(i, j)) };
  const areas = contours(crater, 5).map(area);
  expect(areas).toHaveLength(2);
  expect(Math.sign(areas[0] ?? 0)).toBe(-Math.sign(areas[1] ?? 0));
  const outer = Math.max(...areas.map(Math.abs));
  expect(Math.abs(areas.reduce((sum, one) => sum + one, 0))).toBeCloseTo(
    outer - Math.min(...areas.map(Math.abs)),
    9,
  );
});

test("high ground at the edge is closed along the edge", () => {
  const slope: Net = { nx: 3, nv: 3, at: (i, j) => [i, j], value: (i) => i };
  const loops = contours(slope, 1);
  expect(loops).toHaveLength(1);
  expect(Math.abs(area(loops[0] ?? []))).toBeCloseTo(2, 9);
  expect(contours(slope, 3)).toHaveLength(0);
  expect(Math.abs(area(contours(slope, -1)[0] ?? []))).toBeCloseTo(4, 9);
});
