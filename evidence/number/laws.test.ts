import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  acos,
  asin,
  atan,
  atan2,
  cos,
  exp,
  hypot,
  log,
  PI,
  pow,
  sin,
  tan,
} from "../../core/src/engine/number/index.ts";
import { propertySeed } from "./seed.ts";
import { ulpsOff } from "./ulp.ts";

/* Laws that hold whatever the argument. They cannot see an error that keeps all of them. */

const seed = propertySeed("number laws");
const RUNS = { seed, numRuns: 2000 };
const EPSILON = 2 ** -52;

const angle = fc.double({ min: -1.6e6, max: 1.6e6, noNaN: true });
const any = fc.double();

function always<T extends readonly [number, ...number[]]>(
  arbitrary: fc.Arbitrary<T>,
  law: (...x: T) => void,
): void {
  fc.assert(
    fc.property(arbitrary, (x) => {
      law(...x);
    }),
    RUNS,
  );
}
const near = (found: number, expected: number, within: number): void => {
  expect(Math.abs(found - expected)).toBeLessThanOrEqual(within);
};

describe("symmetry, to the last bit", () => {
  test.each(Object.entries({ sin, tan, asin, atan }))("%s is odd", (_, odd) => {
    always(fc.tuple(any), (x) => expect(odd(-x)).toBe(-odd(x)));
  });
  test("cos is even", () => always(fc.tuple(any), (x) => expect(cos(-x)).toBe(cos(x))));
  test("atan2 mirrors in the x axis, and hypot in both and in their order", () => {
    always(fc.tuple(any, any), (y, x) => {
      expect(atan2(-y, x)).toBe(-atan2(y, x));
      expect(hypot(-x, y)).toBe(hypot(y, x));
    });
  });
});

describe("laws to round-off", () => {
  test("sin and cos lie on the unit circle, and tan is their ratio", () => {
    always(fc.tuple(angle), (x) => {
      near(sin(x) * sin(x) + cos(x) * cos(x), 1, 4 * EPSILON);
      near(tan(x) * cos(x), sin(x), 4 * EPSILON);
    });
  });
  test("the angle of a sum", () => {
    const small = fc.double({ min: -3, max: 3, noNaN: true });
    always(fc.tuple(small, small), (a, b) =>
      near(sin(a + b), sin(a) * cos(b) + cos(a) * sin(b), 8 * EPSILON),
    );
  });
  test("asin and acos share a right angle, and undo sin and cos", () => {
    always(fc.tuple(fc.double({ min: -1, max: 1, noNaN: true })), (x) => {
      near(asin(x) + acos(x), PI / 2, 2 * EPSILON);
      near(sin(asin(x)), x, 2 * EPSILON);
      near(cos(acos(x)), x, 4 * EPSILON);
    });
  });
  test("atan2 finds the point's direction again, in its own quadrant", () => {
    const size = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    always(fc.tuple(size, size), (y, x) => {
      if (hypot(x, y) < 1e-290) return;
      near(cos(atan2(y, x)), x / hypot(x, y), 8 * EPSILON);
      near(sin(atan2(y, x)), y / hypot(x, y), 8 * EPSILON);
    });
  });
  test("log undoes exp, and exp undoes log as far as its argument is exact", () => {
    always(fc.tuple(fc.double({ min: -700, max: 700, noNaN: true })), (x) =>
      near(log(exp(x)), x, 2e-16 * (2 + 2 * Math.abs(x))),
    );
    always(fc.tuple(fc.double({ min: 1e-300, max: 1e300, noNaN: true })), (x) => {
      near(exp(log(x)) / x, 1, (2 + Math.abs(log(x))) * EPSILON);
    });
  });
  test("pow of small whole numbers is exact, and agrees with exp and log elsewhere", () => {
    const whole = fc.integer({ min: -15, max: 15 });
    always(fc.tuple(whole, fc.integer({ min: 1, max: 12 })), (x, y) => {
      expect(pow(x, y)).toBe(Number(BigInt(x) ** BigInt(y)));
    });
    always(
      fc.tuple(fc.double({ min: 0.01, max: 100, noNaN: true }), fc.double({ min: -9, max: 9, noNaN: true })),
      (x, y) => {
        near(pow(x, y) / exp(y * log(x)), 1, 60 * EPSILON);
      },
    );
  });
  test("hypot and root", () => {
    always(fc.tuple(fc.double({ min: 0, max: 1e150, noNaN: true })), (x) => {
      expect(hypot(x, 0)).toBe(x);
      if (x > 1e-290)
        expect(ulpsOff(hypot(3 * x, 4 * x), { expected: 5 * x, rest: 0 })).toBeLessThanOrEqual(3);
    });
  });
});

test("atan2 tells the four quadrants and both zeros apart", () => {
  const found = [atan2(1, 1), atan2(1, -1), atan2(-1, -1), atan2(-1, 1)];
  expect(found.map((x) => x / PI)).toEqual([0.25, 0.75, -0.75, -0.25]);
  expect([atan2(0, 1), atan2(-0, 1), atan2(0, -1), atan2(-0, -1)]).toEqual([0, -0, PI, -PI]);
  expect([atan2(0, 0), atan2(-0, 0), atan2(0, -0), atan2(-0, -0)]).toEqual([0, -0, PI, -PI]);
  expect([atan2(1, 0), atan2(-1, -0)]).toEqual([PI / 2, -PI / 2]);
});
