import { describe, expect, test } from "vitest";
import * as number from "../../core/src/engine/number/index.ts";
import { ANGLE_LIMIT } from "../../core/src/engine/number/quarter-turns.ts";
import { moved, type Point, readTable, ulpsOff } from "./ulp.ts";

/*
 * Every function against true values (mpmath, see make-table.py), and against Math on the values that
 * ECMAScript fixes exactly. What this cannot see: an error between the points of the table, beyond what
 * the laws beside it and the smoothness of the published polynomials rule out.
 */

const TABLE = readTable();

/**
 * Most that a result may be off here, ulp. The functions promise 1, and atan2 and hypot 2; these tighter
 * figures are the worst seen, rounded up, so that a lost tail of a sum shows before the promise breaks.
 */
const ALLOWED = 0.8;
const ALLOWED_OF_TWO: Readonly<Record<string, number>> = { atan2: 1.3, hypot: 1.3 };

const FUNCTIONS: Readonly<Record<string, (x: number, y: number) => number>> = {
  sin: number.sin,
  cos: number.cos,
  tan: number.tan,
  asin: number.asin,
  acos: number.acos,
  atan: number.atan,
  exp: number.exp,
  log: number.log,
  atan2: number.atan2,
  hypot: number.hypot,
  pow: number.pow,
};

function worstOf(points: readonly Point[], found: (x: number, y: number) => number) {
  let worst = { ulps: 0, at: "" };
  for (const point of points) {
    const [x = Number.NaN, y = Number.NaN] = point.arguments;
    const ulps = ulpsOff(found(x, y), point);
    if (ulps > worst.ulps) worst = { ulps, at: point.arguments.join(", ") };
  }
  return worst;
}

describe.each(Object.entries(FUNCTIONS))("%s", (name, ours) => {
  const points = TABLE.get(name) ?? [];
  const allowed = ALLOWED_OF_TWO[name] ?? ALLOWED;
  test("is within its bound of the true value at every point", () => {
    expect(points.length).toBeGreaterThan(250);
    const worst = worstOf(points, ours);
    console.log(`${name}: worst ${worst.ulps.toFixed(2)} ulp of ${points.length} points, at ${worst.at}`);
    expect(worst.ulps, `at ${worst.at}`).toBeLessThanOrEqual(allowed);
  });
  test("is refused when moved by 3 ulp, up or down, at every point", () => {
    for (const point of points.filter(({ expected }) => Number.isFinite(expected))) {
      for (const steps of [3, -3]) {
        expect(ulpsOff(moved(point.expected, steps), point), `${point.arguments}`).toBeGreaterThan(2);
      }
    }
  });
});

/** Values where ECMAScript leaves no freedom: zeros, infinities, not a number, whole numbers, edges. */
const EDGES = [
  0,
  -0,
  1,
  -1,
  0.5,
  -0.5,
  2,
  -2,
  3,
  -3,
  Number.NaN,
  Infinity,
  -Infinity,
  5e-324,
  -5e-324,
  1e-310,
  1e-200,
  1e200,
  1e308,
  -1e308,
  709.78,
  710,
  -745.1,
  -746,
  1 / 3,
  -1 / 3,
  2 ** 53,
  2 ** 53 - 1,
  1 - 2 ** 53,
  2 ** 64,
  1e300,
];

describe("beside Math, which differs in the last bit at most", () => {
  const theirs: Readonly<Record<string, (x: number, y: number) => number>> = { ...mathFunctions() };
  const near = (x: number, y: number, name: string): void => {
    const expected = theirs[name]?.(x, y) ?? 0;
    const ours = FUNCTIONS[name]?.(x, y) ?? 0;
    expect(ulpsOff(ours, { expected, rest: 0 }), `${name}(${x}, ${y})`).toBeLessThanOrEqual(2);
  };
  test.each(["sin", "cos", "tan", "asin", "acos", "atan", "exp", "log"])("%s", (name) => {
    const angle = ["sin", "cos", "tan"].includes(name);
    for (const x of EDGES) if (!angle || !(Math.abs(x) > ANGLE_LIMIT && Number.isFinite(x))) near(x, 0, name);
  });
  test.each(["atan2", "hypot", "pow"])("%s", (name) => {
    for (const x of EDGES) for (const y of EDGES) near(x, y, name);
  });
  test("angles beyond the limit are refused", () => {
    for (const one of [number.sin, number.cos, number.tan]) {
      expect(one(moved(ANGLE_LIMIT, 1))).toBeNaN();
      expect(one(-1e300)).toBeNaN();
      expect(one(ANGLE_LIMIT)).not.toBeNaN();
    }
  });
});

function mathFunctions() {
  const { sin, cos, tan, asin, acos, atan, exp, log, atan2, hypot, pow } = Math;
  return { sin, cos, tan, asin, acos, atan, exp, log, atan2, hypot, pow };
}
