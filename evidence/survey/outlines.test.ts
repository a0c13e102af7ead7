import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { crossing, type Point } from "../../core/src/survey/crossing.ts";
import { propertySeed } from "../number/seed.ts";
import { type Breakable, changed, problemsIn, surveyOf } from "./cases.ts";

const RUNS = { seed: propertySeed("outlines"), numRuns: 500 };
const trace = (change: (trace: Breakable) => void) => changed((file) => change(file.horses[0].traces[0]));
const said = (change: (trace: Breakable) => void) =>
  problemsIn(trace(change)).map(({ where, read, allowed }) => `${where} | ${read} | ${allowed}`);
const times = (points: number[][], by: number) => points.map((point) => point.map((one) => one * by));

describe("a trace", () => {
  it("is read in mm from the unit it is typed in, point by point", () => {
    const mm = surveyOf(trace(() => undefined)).horses[0]?.traces[0]?.points ?? [];
    const cm =
      surveyOf(
        trace((one) => Object.assign(one, { unit: "cm", points: times(one.points, 0.1), repeats: [] })),
      ).horses[0]?.traces[0]?.points ?? [];
    const words = surveyOf(
      trace((one) =>
        Object.assign(one, { points: one.points.map((p: number[]) => p.map((v) => `${v} mm`)) }),
      ),
    ).horses[0]?.traces[0]?.points;
    expect(words).toEqual(mm);
    expect(cm.length).toBe(mm.length);
    for (const [at, point] of cm.entries()) expect(point[1]).toBeCloseTo(mm[at]?.[1] ?? 0, 9);
  });

  it("may double back", () => {
    const points = [
      [-80, -90],
      [-95, -70],
      [-85, -55],
      [-40, -20],
      [0, 0],
      [40, -20],
      [85, -55],
      [95, -70],
      [80, -90],
    ];
    expect(problemsIn(trace((one) => Object.assign(one, { points, repeats: [] })))).toEqual([]);
  });

  it("in inches called mm is asked about", () => {
    expect(
      said((one) => Object.assign(one, { points: times(one.points, 1 / 25.4), repeats: [] }))[0],
    ).toContain('is the unit inches or cm? Then write "unit": "in"');
  });

  it("typed from the off side is refused", () => {
    expect(said((one) => one.points.reverse())[0]).toContain("near side first");
  });

  it("on one side of the midline only is refused", () => {
    expect(
      said((one) =>
        Object.assign(one, { points: one.points.map(([y, z]: number[]) => [(y ?? 0) + 200, z]) }),
      )[0],
    ).toContain("both sides of the midline");
  });

  it("too wide, too tall, or hardly over the midline is refused", () => {
    const wide = (by: number) => (one: Breakable) =>
      Object.assign(one, { points: one.points.map(([y, z]: number[]) => [(y ?? 0) * by, z]) });
    const tall = (by: number) => (one: Breakable) =>
      Object.assign(one, { points: one.points.map(([y, z]: number[]) => [y, (z ?? 0) * by]) });
    expect(said(wide(4))).toEqual([]);
    expect(said(wide(4.5))[0]).toContain("60 mm to 1100 mm across");
    expect(said(tall(4))).toEqual([]);
    expect(said(tall(5))[0]).toContain("at most 450 mm from lowest to highest");
    const [enough, tooFew] = [35, 25].map((off) => (one: Breakable) => {
      one.points = one.points.filter(([y]: number[]) => (y ?? 0) <= off);
    });
    expect([enough, tooFew].map((change) => said(change ?? wide(1)).length)).toEqual([0, 1]);
  });

  it("with depths typed as heights is refused", () => {
    expect(
      said((one) => Object.assign(one, { points: one.points.map(([y, z]: number[]) => [y, -(z ?? 0)]) }))[0],
    ).toContain("z goes up");
  });

  it("with its top elsewhere is refused", () => {
    expect(
      said((one) =>
        Object.assign(one, { points: one.points.map(([y, z]: number[]) => [y, (z ?? 0) - 60]) }),
      )[0],
    ).toContain("top of the back at (0, 0)");
  });

  it("that crosses itself is refused, and both stretches are named", () => {
    const [problem] = said((one) => {
      const [a, b] = [one.points[10], one.points[14]];
      one.points[10] = b;
      one.points[14] = a;
    });
    expect(problem).toContain("the line from point 11 to 12 crosses the line from point 14 to 15");
    expect(problem).toContain("horses[0].traces[0].points[10]");
  });

  it("with a point twice, too many, too few, or one out of reach is refused", () => {
    expect(said((one) => one.points.splice(5, 0, one.points[5]))[0]).toContain(
      "the same point as the one before it (points 6 and 7)",
    );
    expect(said((one) => (one.points = one.points.slice(0, 6)))[0]).toContain("7 to 2000 points");
    expect(
      said(
        (one) =>
          (one.points = Array.from({ length: 2001 }, (_, at) => [at - 1000, -Math.abs(at - 1000) / 10])),
      )[0],
    ).toContain("7 to 2000 points");
    expect(said((one) => (one.points[3] = [-1e9, 0]))[0]).toContain("a number from -2000 to 2000 mm");
    expect(said((one) => (one.points[3] = ["NaN", 0]))[0]).toContain("a number from -2000 to 2000 mm");
    expect(said((one) => (one.repeats[0][2] = ["1,425", 0]))[0]).toContain("is that 1.425 or 1425?");
  });

  it("is held to the same when it is drawn again", () => {
    expect(said((one) => one.repeats[0].reverse())[0]).toContain("horses[0].traces[0].repeats[0]");
  });
});

describe("a profile", () => {
  const profile = (points: unknown) =>
    problemsIn(changed((file) => (file.horses[0].profile.points = points))).map(
      ({ read, allowed }) => `${read} | ${allowed}`,
    );
  it("runs backward, is long enough and not too high", () => {
    expect(
      profile([
        [0, 0],
        [200, -50],
        [400, -40],
      ]),
    ).toEqual([]);
    expect(
      profile([
        [0, 0],
        [400, -50],
        [200, -40],
      ])[0],
    ).toContain("x growing from point to point");
    expect(
      profile([
        [0, 0],
        [8, -2],
        [16, -1.5],
      ])[0],
    ).toContain("is the unit inches or cm?");
    expect(
      profile([
        [0, 0],
        [200, -500],
        [400, -40],
      ])[0],
    ).toContain("from lowest to highest");
    const long = (x: number) =>
      profile([
        [0, 0],
        [200, -50],
        [x, -40],
      ]);
    expect(long(1250)).toEqual([]);
    expect(long(1350)[0]).toContain("at most 1300 mm long");
  });
});

describe("crossing", () => {
  const coordinate = fc.integer({ min: -6, max: 6 });
  const line = fc
    .array(fc.tuple(coordinate, coordinate), { minLength: 2, maxLength: 9 })
    .map((points) => points.filter(([x, y], at) => x !== points[at - 1]?.[0] || y !== points[at - 1]?.[1]));

  /** The slow way: every pair of stretches, met by solving for where along each the other lies, in whole numbers. */
  function slow(points: readonly Point[]): boolean {
    return points.slice(1).some((_, i) => points.slice(1).some((__, j) => j > i && slowMeet(points, i, j)));
  }
  function slowMeet(points: readonly Point[], i: number, j: number): boolean {
    const [a, b, c, d] = [points[i], points[i + 1], points[j], points[j + 1]] as [Point, Point, Point, Point];
    const [ux, uy, vx, vy, wx, wy] = [
      b[0] - a[0],
      b[1] - a[1],
      d[0] - c[0],
      d[1] - c[1],
      c[0] - a[0],
      c[1] - a[1],
    ];
    const across = ux * vy - uy * vx;
    if (j === i + 1) return across === 0 && ux * vx + uy * vy < 0;
    if (across === 0) {
      if (wx * uy - wy * ux !== 0) return false;
      const along = (p: Point) => (p[0] - a[0]) * ux + (p[1] - a[1]) * uy;
      return Math.max(along(c), along(d)) >= 0 && Math.min(along(c), along(d)) <= ux * ux + uy * uy;
    }
    const [s, t] = [(wx * vy - wy * vx) / across, (wx * uy - wy * ux) / across];
    return s >= 0 && s <= 1 && t >= 0 && t <= 1;
  }

  it("is found just where the slow way finds one", () => {
    let crossed = 0;
    fc.assert(
      fc.property(line, (points) => {
        const found = crossing(points);
        crossed += found ? 1 : 0;
        expect(found !== undefined).toBe(slow(points));
        if (found) expect(slowMeet(points, found[0], found[1])).toBe(true);
      }),
      { ...RUNS, numRuns: 5000 },
    );
    expect(crossed).toBeGreaterThan(500);
  });

  it("is the same from the other end", () => {
    fc.assert(
      fc.property(line, (points) => {
        expect(crossing([...points].reverse()) !== undefined).toBe(crossing(points) !== undefined);
      }),
      RUNS,
    );
  });
});
