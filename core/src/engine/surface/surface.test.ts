import { describe, expect, test } from "vitest";
import {
  combine,
  fitGrid,
  type Grid,
  gridSurface,
  type SampleSurface,
  type SurfaceSample,
} from "../surface.ts";

const numbers = (n: number): Float64Array => new Float64Array(n);
const sampleFor = (n: number): SurfaceSample => ({
  z: numbers(n),
  zx: numbers(n),
  zy: numbers(n),
  zxx: numbers(n),
  zxy: numbers(n),
  zyy: numbers(n),
});

function at(surface: SampleSurface, x: number, y: number): Record<keyof SurfaceSample, number> {
  const out = sampleFor(1);
  surface(1, Float64Array.of(x), Float64Array.of(y), out);
  const first = (values: Float64Array): number => values[0]!;
  return {
    z: first(out.z),
    zx: first(out.zx),
    zy: first(out.zy),
    zxx: first(out.zxx),
    zxy: first(out.zxy),
    zyy: first(out.zyy),
  };
}

function gridOver(nx: number, ny: number): Grid {
  return { x0: -1, dx: 3 / (nx - 1), nx, y0: 2, dy: 2 / (ny - 1), ny };
}

function valuesOf(f: (x: number, y: number) => number, { x0, dx, nx, y0, dy, ny }: Grid): Float64Array {
  return Float64Array.from({ length: nx * ny }, (_, k) =>
    f(x0 + Math.floor(k / ny) * dx, y0 + (k % ny) * dy),
  );
}

function fitted(f: (x: number, y: number) => number, grid: Grid): SampleSurface {
  return gridSurface({ ...grid, coefficients: fitGrid(valuesOf(f, grid), grid.nx, grid.ny) });
}

// Any smooth surface; with exp, whose derivatives do not vanish at the edges.
const smooth = (x: number, y: number): number => Math.exp(0.7 * x) * Math.sin(1.3 * y) + 0.4 * x * y * y;
const exact = {
  z: smooth,
  zx: (x: number, y: number) => 0.7 * Math.exp(0.7 * x) * Math.sin(1.3 * y) + 0.4 * y * y,
  zy: (x: number, y: number) => 1.3 * Math.exp(0.7 * x) * Math.cos(1.3 * y) + 0.8 * x * y,
  zxx: (x: number, y: number) => 0.49 * Math.exp(0.7 * x) * Math.sin(1.3 * y),
  zxy: (x: number, y: number) => 0.91 * Math.exp(0.7 * x) * Math.cos(1.3 * y) + 0.8 * y,
  zyy: (x: number, y: number) => -1.69 * Math.exp(0.7 * x) * Math.sin(1.3 * y) + 0.8 * x,
};
type Part = keyof typeof exact;
const parts = ["z", "zx", "zy", "zxx", "zxy", "zyy"] as const satisfies readonly Part[];

function worst(n: number, part: Part): number {
  const surface = fitted(smooth, gridOver(n, n));
  let most = 0;
  for (let i = 0; i <= 40; i++) {
    for (let j = 0; j <= 40; j++) {
      const [x, y] = [-1 + (3 * i) / 40.001, 2 + (2 * j) / 40.001];
      most = Math.max(most, Math.abs(at(surface, x, y)[part] - exact[part](x, y)));
    }
  }
  return most;
}

describe("a bicubic surface over a grid", () => {
  test("goes through its values", () => {
    const grid = gridOver(9, 7);
    const surface = fitted(smooth, grid);
    for (let i = 0; i < 9; i++) {
      for (let j = 0; j < 7; j++) {
        const [x, y] = [grid.x0 + i * grid.dx, grid.y0 + j * grid.dy];
        expect(Math.abs(at(surface, x, y).z - smooth(x, y))).toBeLessThan(1e-13);
      }
    }
  });

  // Order of a cubic spline: four for the value, less one for each derivative, up to the edges.
  test.each(parts.map((part) => [part, { z: 4, zx: 3, zy: 3, zxx: 2, zxy: 2, zyy: 2 }[part]] as const))(
    "the error of %s falls with order %d, edges included",
    (part, order) => {
      const found = Math.log2(worst(17, part) / worst(33, part));
      console.info(`${part}: order ${found.toFixed(2)}`);
      expect(found).toBeGreaterThan(order - 0.3);
    },
  );

  test("is a bicubic polynomial where its values are one, also at four by four", () => {
    const cubic = (x: number, y: number): number => (1 + x - 2 * x * x + x ** 3) * (3 - y + 0.5 * y ** 3);
    const surface = fitted(cubic, gridOver(4, 4));
    for (const [x, y] of [
      [-1, 2],
      [0.3, 2.9],
      [1.99, 3.7],
      [2, 4],
    ] as const) {
      expect(Math.abs(at(surface, x, y).z - cubic(x, y))).toBeLessThan(1e-12 * 200);
    }
  });

  test.each([
    ["inside", 0.37, 2.81],
    ["before x", -1.4, 2.81],
    ["beyond x", 2.6, 3.3],
    ["before y", 0.9, 1.2],
    ["beyond both", 2.9, 4.8],
  ])("derivatives are those of the value: %s", (_, x, y) => {
    const surface = fitted(smooth, gridOver(12, 10));
    const e = 1e-4;
    const here = at(surface, x, y);
    const slope = (of: "z" | "zx" | "zy", dx: number, dy: number): number =>
      (at(surface, x + dx, y + dy)[of] - at(surface, x - dx, y - dy)[of]) / (2 * e);
    expect(here.zx).toBeCloseTo(slope("z", e, 0), 6);
    expect(here.zy).toBeCloseTo(slope("z", 0, e), 6);
    expect(here.zxx).toBeCloseTo(slope("zx", e, 0), 6);
    expect(here.zxy).toBeCloseTo(slope("zx", 0, e), 6);
    expect(here.zyy).toBeCloseTo(slope("zy", 0, e), 6);
  });

  test("goes on straight beyond the grid, without a step at the edge", () => {
    const surface = fitted(smooth, gridOver(12, 10));
    const [edge, one, two] = [0, 1, 2].map((out) => at(surface, 2 + out, 3.1).z);
    expect(two! - one!).toBeCloseTo(one! - edge!, 10);
    expect(at(surface, 2 + 1e-9, 3.1).zx).toBeCloseTo(at(surface, 2, 3.1).zx, 6);
    expect(at(surface, 3, 3.1).zxx).toBe(0);
  });

  test("coefficients are linear in the values: a sum of scaled arrays is the fit of the sum", () => {
    const grid = gridOver(11, 8);
    const [a, b, c] = [smooth, (x: number) => x * x, (x: number, y: number) => Math.cos(x + y)].map((f) =>
      valuesOf(f, grid),
    );
    const sum = a!.map((value, i) => value + 0.3 * b![i]! - 2 * c![i]!);
    const fitOf = (values: Float64Array): Float64Array => fitGrid(values, 11, 8);
    const out = numbers(13 * 10);
    combine(fitOf(a!), [fitOf(b!), fitOf(c!)], [0.3, -2], out);
    fitOf(sum).forEach((value, i) => {
      expect(Math.abs(value - out[i]!)).toBeLessThan(1e-12);
    });
  });

  test("a grid that is none is refused by name", () => {
    expect(() => fitGrid(numbers(9), 3, 3)).toThrow("at least 4 by 4");
    expect(() => fitGrid(numbers(15), 4, 4)).toThrow("values");
    expect(() => fitGrid(numbers(16).fill(Number.NaN), 4, 4)).toThrow("values");
    expect(() => gridSurface({ ...gridOver(4, 4), coefficients: numbers(16) })).toThrow("coefficients");
    expect(() => combine(numbers(4), [numbers(3)], [1], numbers(4))).toThrow("modes");
  });
});
