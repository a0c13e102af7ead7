import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { drawNormal } from "../../core/src/engine/random.ts";
import { buildFront, isLacking } from "../../core/src/shape/back.ts";
import type { Section } from "../../core/src/shape/model.ts";
import { traceDoubt, traceIds } from "../../core/src/shape/trace-doubt.ts";
import type { SurveyedHorse } from "../../core/src/survey/case.ts";
import { propertySeed } from "../number/seed.ts";
import { crossHeight, frontOnly, mirrored, modelHorse, tracePoints } from "./model-back.ts";

const DEGREE = Math.PI / 180;
type Pair = readonly [number, number];

function front(horse: SurveyedHorse): Section {
  const section = buildFront(horse, "cold");
  if (isLacking(section)) throw new Error(section.lacking.join(" "));
  return section;
}

/** Angle of the straight line of least squares through a known height, by 400 places. */
function trueFace(height: (y: number) => number, from: number, to: number): number {
  let [zu, uu] = [0, 0];
  for (let k = 0; k <= 400; k++) {
    const u = from + ((to - from) * k) / 400;
    zu += height(u) * (u - (from + to) / 2);
    uu += (u - (from + to) / 2) ** 2;
  }
  return -Math.atan(zu / uu);
}

const CATENARY = 90;
const catenary = (y: number) => -CATENARY * (Math.cosh(y / CATENARY) - 1);
const RADIUS = 140;
const circle = (y: number) => Math.sqrt(RADIUS * RADIUS - y * y) - RADIUS;
/** By angle, 20 degrees past the widest place: the sides come in again below. */
const circlePoints = (step: number, noise = 0, seed = 1): Pair[] =>
  Array.from({ length: Math.round(220 / step) + 1 }, (_, i): Pair => {
    const turn = (-110 + (220 * i) / Math.round(220 / step)) * DEGREE;
    // The top is where heights are counted from.
    const miss = (word: string) => (turn === 0 ? 0 : noise * drawNormal(seed, i, word));
    return [RADIUS * Math.sin(turn) + miss("y"), RADIUS * Math.cos(turn) - RADIUS + miss("z")];
  });
const over = (height: (y: number) => number, reach = 150): Pair[] =>
  Array.from(
    { length: 41 },
    (_, i): Pair => [-reach + (2 * reach * i) / 40, height(-reach + (2 * reach * i) / 40)],
  );

describe("a section recovers a known shape from exact points", () => {
  test.each([
    ["circle", front(frontOnly(circlePoints(4))), circle],
    ["catenary", front(frontOnly(over(catenary))), catenary],
    ["reference back, front", front(modelHorse()), (y: number) => crossHeight(0, y)],
  ] as const)("%s: face angles to 0.15 degrees", (_name, section, height) => {
    for (const [from, to] of [
      [40, 110],
      [50, 90],
      [60, 125],
    ] as const) {
      for (const side of ["near", "off"] as const) {
        expect(Math.abs(section.faceAngleRad(side, from, to, {}) - trueFace(height, from, to))).toBeLessThan(
          0.15 * DEGREE,
        );
      }
    }
  });
  test("a circle: half-widths to 0.3 mm, also below the widest place, none below the trace's end", () => {
    const section = front(frontOnly(circlePoints(4)));
    for (const depth of [30, 60, 90, 140]) {
      expect(section.halfWidthMm("off", depth, {})).toBeCloseTo(
        Math.sqrt(RADIUS ** 2 - (RADIUS - depth) ** 2),
        0,
      );
      expect(
        Math.abs(
          (section.halfWidthMm("near", depth, {}) ?? 0) - Math.sqrt(RADIUS ** 2 - (RADIUS - depth) ** 2),
        ),
      ).toBeLessThan(0.3);
    }
    expect(section.halfWidthMm("near", 170, {})).toBeLessThan(RADIUS);
    expect(section.halfWidthMm("near", 200, {})).toBeUndefined();
  });
  test("sharp withers (12 mm): half-widths to 0.4 mm", () => {
    const section = front(modelHorse());
    for (const y of [40, 70, 110])
      expect(Math.abs((section.halfWidthMm("off", -crossHeight(0, y), {}) ?? 0) - y)).toBeLessThan(0.4);
  });
});

describe("a section from rough points", () => {
  const errors = Array.from({ length: 40 }, (_, seed) => {
    const section = front(frontOnly(circlePoints(3, 1, seed + 1)));
    return {
      angle: section.faceAngleRad("off", 40, 110, {}) - trueFace(circle, 40, 110),
      width: (section.halfWidthMm("off", 60, {}) ?? 0) - Math.sqrt(RADIUS ** 2 - 80 ** 2),
    };
  });
  const rms = (of: "angle" | "width") =>
    Math.sqrt(errors.reduce((sum, one) => sum + one[of] ** 2, 0) / errors.length);
  test("1 mm a point, 40 seeds: face angle within 0.8 degrees, half-width within 1 mm (rms)", () => {
    expect(rms("angle") / DEGREE).toBeLessThan(0.8);
    expect(rms("width")).toBeLessThan(1);
    // Were there no error at all, the points would not have been rough.
    expect(rms("angle") / DEGREE).toBeGreaterThan(0.05);
  });
});

describe("doubt of a trace", () => {
  const once = front(modelHorse());
  const four = front(modelHorse({ repeats: 3 }));
  const sd = (section: Section, id: string) => {
    const found = section.uncertain.find((one) => one.id === id);
    return found?.kind === "normal" ? found.sd : Number.NaN;
  };
  test("own and shared part make 3 mm and 2 degrees", () => {
    expect(Math.sqrt(once.widthOwnMm ** 2 + once.widthSharedMm ** 2)).toBeCloseTo(3, 12);
    const tilt = sd(once, "trace.front.cold.tiltNear.rad") ** 2 + sd(once, "flexible-curve.tilt.rad") ** 2;
    expect(Math.sqrt(tilt) / DEGREE).toBeCloseTo(2, 9);
  });
  test("four drawings halve the own part and leave the shared one", () => {
    expect(four.widthOwnMm).toBeCloseTo(once.widthOwnMm / 2, 12);
    expect(sd(four, "trace.front.cold.tiltOff.rad")).toBeCloseTo(
      sd(once, "trace.front.cold.tiltOff.rad") / 2,
      12,
    );
    expect(four.widthSharedMm).toBe(once.widthSharedMm);
    expect(sd(four, "flexible-curve.tilt.rad")).toBe(sd(once, "flexible-curve.tilt.rad"));
  });
  test("repeats that differ more than that are believed", () => {
    const wide = [1, 1.15, 0.85].map((part) =>
      tracePoints(0, { height: (_x, y) => part * crossHeight(0, y) }, 0),
    );
    expect(front(frontOnly(wide[0] ?? [], wide.slice(1))).widthOwnMm).toBeGreaterThan(
      once.widthOwnMm / Math.sqrt(3),
    );
    // Both sides err each by themselves: a whole width by the root of two times one side, the mean of four by half.
    const believed = traceDoubt(traceIds("front", "cold"), 4, 5);
    expect(believed.widthOwnMm).toBeCloseTo((Math.SQRT2 * 5) / 2, 12);
  });
  test("a wider side is wider by that at every depth, and no steeper", () => {
    const shift = { "trace.front.cold.widthOff.mm": 2 };
    for (const depth of [50, 80]) {
      expect(
        (once.halfWidthMm("off", depth, shift) ?? 0) - (once.halfWidthMm("off", depth, {}) ?? 0),
      ).toBeCloseTo(2, 6);
      expect(once.halfWidthMm("near", depth, shift)).toBe(once.halfWidthMm("near", depth, {}));
    }
    const far = [60, 120] as const;
    expect(
      Math.abs(once.faceAngleRad("off", ...far, shift) - once.faceAngleRad("off", ...far, {})),
    ).toBeLessThan(0.3 * DEGREE);
  });
  test("a tilted side is steeper by that, and as wide where it turns", () => {
    const shift = { "trace.front.cold.tiltNear.rad": 1.5 * DEGREE };
    expect(
      (once.faceAngleRad("near", 50, 110, shift) - once.faceAngleRad("near", 50, 110, {})) / DEGREE,
    ).toBeCloseTo(1.5, 1);
    const depth = -crossHeight(0, 75);
    expect(Math.abs((once.halfWidthMm("near", depth, shift) ?? 0) - 75)).toBeLessThan(0.5);
  });
  test("the curve's shared error widens both sides by half of it each", () => {
    const shift = { "flexible-curve.width.mm": 3 };
    for (const side of ["near", "off"] as const) {
      expect((once.halfWidthMm(side, 60, shift) ?? 0) - (once.halfWidthMm(side, 60, {}) ?? 0)).toBeCloseTo(
        1.5,
        6,
      );
    }
  });
  test("small deviations act in proportion, and add up", () => {
    const seed = propertySeed("section deviations");
    const small = fc.double({ min: -0.2, max: 0.2, noNaN: true });
    fc.assert(
      fc.property(small, small, (width, tilt) => {
        const one = { "trace.front.cold.widthOff.mm": width };
        const two = { "trace.front.cold.tiltOff.rad": tilt * DEGREE };
        const read = (deviations: Record<string, number>) =>
          once.faceAngleRad("off", 45, 115, deviations) - once.faceAngleRad("off", 45, 115, {});
        expect(read({ ...one, ...two })).toBeCloseTo(read(one) + read(two), 4);
        expect(read({ "trace.front.cold.widthOff.mm": 2 * width })).toBeCloseTo(2 * read(one), 4);
      }),
      { seed, numRuns: 50 },
    );
  });
});

describe("sides", () => {
  const lopsided = modelHorse({ height: (x, y) => crossHeight(x, y > 0 ? y : 1.12 * y), noiseMm: 0.4 });
  test("a mirrored horse has mirrored sections", () => {
    const [there, back] = [front(lopsided), front(mirrored(lopsided))];
    for (const [one, other] of [
      ["near", "off"],
      ["off", "near"],
    ] as const) {
      expect(back.faceAngleRad(one, 40, 110, {})).toBeCloseTo(there.faceAngleRad(other, 40, 110, {}), 9);
      expect(back.halfWidthMm(one, 60, {})).toBeCloseTo(there.halfWidthMm(other, 60, {}) ?? 0, 7);
    }
    expect(there.faceAngleRad("near", 40, 110, {})).toBeGreaterThan(
      there.faceAngleRad("off", 40, 110, {}) + DEGREE,
    );
  });
  test("the outline runs from the near side to the off side through the top", () => {
    const { outline } = front(lopsided);
    expect(outline[0]?.[0]).toBeLessThan(-100);
    expect(outline[outline.length - 1]?.[0]).toBeGreaterThan(100);
    expect(Math.min(...outline.map(([y, z]) => Math.sqrt(y * y + z * z)))).toBeLessThan(0.5);
  });
});

describe("what cannot be used is named", () => {
  test("no front trace, or none of that temper", () => {
    expect(buildFront({ ...modelHorse(), traces: [] }, "cold")).toEqual({ lacking: ["traces.front.cold"] });
    expect(buildFront(modelHorse(), "warm")).toEqual({ lacking: ["traces.front.warm"] });
  });
  test("nobody asked: counts as cold", () => {
    expect(isLacking(buildFront(modelHorse({ temper: "not-asked" }), "cold"))).toBe(false);
  });
});
