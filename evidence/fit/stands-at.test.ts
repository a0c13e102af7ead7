import { describe, expect, test } from "vitest";
import { standsAtMm } from "../../core/src/fit/stands-at.ts";
import type { Head, Section } from "../../core/src/shape/model.ts";
import { ARMS_95 } from "./model-forms.ts";

const DEGREE = Math.PI / 180;
/** What is straight of a point begins 35 mm below the crown (common practice, no source). */
const STRAIGHT_BELOW_MM = 35;

/** A roof: each side falls away straight from the top, `wider` mm out for each mm down, read to `deepMm`. */
function roof(wider: { near: number; off: number }, deepMm: number): Section {
  return {
    xMm: 0,
    widthOwnMm: 0,
    widthSharedMm: 0,
    faceAngleRad: () => 0,
    halfWidthMm: (side, depth) => (depth > deepMm ? undefined : wider[side] * depth),
    uncertain: [],
    outline: [],
  };
}
const headOf = (depthMm: number, spreadMm: number, near: number, off: number): Head => ({
  ...ARMS_95,
  depthMm,
  spreadMm,
  halfAngleRad: { near: near * DEGREE, off: off * DEGREE },
});

/** By hand: the point's middle, with the panel square under it, meets the roof at this depth below the top. */
function crownByHand({ depthMm, spreadMm }: Head, degrees: number, panelMm: number, wider: number): number {
  const [sin, cos] = [Math.sin(degrees * DEGREE), Math.cos(degrees * DEGREE)];
  const up = (depthMm - STRAIGHT_BELOW_MM) / 2;
  const out = spreadMm / 2 - up * (sin / cos) - panelMm * cos;
  return depthMm - up + panelMm * sin - out / wider;
}

/** 22 halvings of 80 mm and the head's depth. */
const NEAR_MM = 1e-4;

describe("how high a head stands on a roof, in closed form", () => {
  test.each([
    [95, 205, 45, 30, 0.9],
    [95, 205, 45, 0, 0.9],
    [110, 180, 38, 25, 0.7],
    [80, 230, 52, 40, 1.6],
  ])(
    "%i mm deep, %i mm at the tips, %i degrees, panel %i mm, roof %f",
    (depth, spread, degrees, panel, wider) => {
      const head = headOf(depth, spread, degrees, degrees);
      const found = standsAtMm(roof({ near: wider, off: wider }, 500), head, panel, {});
      const byHand = crownByHand(head, degrees, panel, wider);
      expect(Math.abs((found as number) - byHand)).toBeLessThan(NEAR_MM);
      expect(Math.abs((found as number) - 1.05 * byHand)).toBeGreaterThan(NEAR_MM);
    },
  );

  test.each([
    [{ near: 1.2, off: 0.8 }, 45, 45],
    [{ near: 0.8, off: 1.2 }, 45, 45],
    [{ near: 0.9, off: 0.9 }, 50, 40],
    [{ near: 0.9, off: 0.9 }, 40, 50],
  ])("uneven: it stands on the side that is met first (%o, %i and %i degrees)", (wider, near, off) => {
    const head = headOf(95, 205, near, off);
    const [a, b] = [crownByHand(head, near, 30, wider.near), crownByHand(head, off, 30, wider.off)];
    expect(Math.abs(a - b)).toBeGreaterThan(3);
    const found = standsAtMm(roof(wider, 500), head, 30, {});
    expect(Math.abs((found as number) - Math.max(a, b))).toBeLessThan(NEAR_MM);
  });

  test("a head that goes down past the top stands below it", () => {
    const head = headOf(60, 280, 30, 30);
    const byHand = crownByHand(head, 30, 5, 1.4);
    expect(byHand).toBeLessThan(-10);
    expect(
      Math.abs((standsAtMm(roof({ near: 1.4, off: 1.4 }, 500), head, 5, {}) as number) - byHand),
    ).toBeLessThan(NEAR_MM);
  });

  test("a trace that ends before the point meets it is named as lacking; one that ends just below is enough", () => {
    const head = headOf(95, 205, 45, 45);
    const depth = (102.5 - 30 - 30 * Math.cos(45 * DEGREE)) / 0.9;
    const wider = { near: 0.9, off: 0.9 };
    expect(standsAtMm(roof(wider, depth - 1), head, 30, {})).toEqual({ lacking: ["traces.front.points"] });
    expect(standsAtMm(roof(wider, depth + 1), head, 30, {})).toBeTypeOf("number");
  });
});
