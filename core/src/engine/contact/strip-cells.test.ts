import { describe, expect, test } from "vitest";
import { type Strip, type StripPair, stripCells } from "./strip-cells.ts";

const level: Strip = {
  innerEdge: () => 40,
  width: () => 100,
  faceAngle: () => 0,
  height: () => -60,
  thickness: (x, across) => 30 + 0.01 * x + across,
};
const pair: StripPair = {
  length: 420,
  nx: 9,
  nv: 4,
  low: level,
  high: level,
  faceCurvature: 0,
  turn: () => 0,
  turnHeight: 50,
};

describe("cells of a pair of strips", () => {
  const cells = stripCells(pair);

  test("stand at the middles of an even mesh, low side first, from the inner edge outward", () => {
    expect(cells.n).toBe(72);
    expect([cells.x[0], cells.y[0], cells.y[3], cells.x[4]]).toEqual([
      420 / 18,
      -52.5,
      -127.5,
      (1.5 * 420) / 9,
    ]);
    expect([cells.y[36], cells.y[39]]).toEqual([52.5, 127.5]);
    expect(cells.z.every((z) => Math.abs(z + 60) < 1e-12)).toBe(true);
  });

  test("share the strips' area out and cut them in thirds of the length and halves of the width", () => {
    expect(cells.area.reduce((sum, a) => sum + a, 0)).toBeCloseTo(2 * 420 * 100, 6);
    const of = (third: number): number => cells.third.filter((value) => value === third).length;
    expect([of(0), of(1), of(2)]).toEqual([24, 24, 24]);
    expect(cells.x.every((x, i) => Math.floor(x / 140) === cells.third[i])).toBe(true);
    expect(Array.from(cells.inner.slice(0, 4))).toEqual([1, 1, 0, 0]);
    expect(cells.y.every((y, i) => y > 0 === (cells.side[i] === 1))).toBe(true);
    expect(cells.thickness[0]).toBeCloseTo(30 + 4.2 / 18 - 0.75, 12);
  });

  test("opening carries what lies below the turning point outward on both sides, and keeps its distance", () => {
    const open = stripCells({ ...pair, turn: (x) => 0.1 * (1 - x / 420) });
    open.y.forEach((y, i) => {
      expect(Math.abs(y)).toBeGreaterThan(Math.abs(cells.y[i]!));
      const radius = Math.sqrt(y * y + (open.z[i]! - 50) ** 2);
      expect(radius).toBeCloseTo(Math.sqrt(cells.y[i]! ** 2 + 110 ** 2), 9);
    });
  });

  test("each side has its own form; a face that stands out is lowest in its middle", () => {
    const high: Strip = { ...level, faceAngle: () => 0.5, innerEdge: (x) => 40 + 0.1 * x };
    const two = stripCells({ ...pair, high, faceCurvature: 1 / 300 });
    expect(two.z[1]).toBeLessThan(two.z[0]!);
    expect(two.z[39]).toBeLessThan(two.z[36]!);
    expect(two.y[36 + 32]).toBeGreaterThan(two.y[36]!);
    expect(two.y[32]).toBe(two.y[0]);
  });

  test("a mesh or form that is none is refused by name", () => {
    expect(() => stripCells({ ...pair, nx: 10 })).toThrow("nx: 10, not a multiple of 3");
    expect(() => stripCells({ ...pair, nv: 0 })).toThrow("nv");
    expect(() => stripCells({ ...pair, length: Number.NaN })).toThrow("length");
    expect(() => stripCells({ ...pair, low: { ...level, width: () => -1 } })).toThrow("width");
    expect(() => stripCells({ ...pair, high: { ...level, thickness: () => Number.NaN } })).toThrow(
      "thickness",
    );
  });
});
