import { describe, expect, test } from "vitest";
import type { SampleSurface } from "../../core/src/engine/surface.ts";
import { sectionsOf } from "../../core/src/fit/sections.ts";
import { unloadedOf } from "../../core/src/fit/unloaded.ts";
import type { Section } from "../../core/src/shape/model.ts";
import { inputsOf } from "../contact/model-case.ts";
import { ARMS_95, treeOf } from "./model-forms.ts";

const DEGREE = Math.PI / 180;
const model = treeOf(inputsOf("ct-horse-girth"));
const LENGTH = model.lengthMm;
/** Straight panels, all at one height. */
const straight = { ...model.halves.near, heightMm: () => 0, faceAngleRad: () => 0 };
const tree = { ...model, halves: { near: straight, off: straight } };
/** A back that is a parabola along x: `bend` above 0 rises in its middle (a banana), below 0 falls (a hollow). */
const backWith =
  (bend: number, tilt: number): SampleSurface =>
  (n, x, _y, out) => {
    for (let i = 0; i < n; i++) {
      const along = (x[i] ?? 0) - LENGTH / 2;
      out.z[i] = -bend * along * along + tilt * along;
    }
  };

/** A straight body on a parabola, in closed form. */
describe("laid on without load", () => {
  const bend = 8 / (LENGTH / 2) ** 2;
  test.each([0, 0.07])(
    "over a hollow of 8 mm it bridges 8 mm and does not rock, tilted %f or not",
    (tilt) => {
      const { bridgeMm, rockMm } = unloadedOf(tree, backWith(-bend, tilt), 0);
      expect(bridgeMm).toBeCloseTo(8, 9);
      expect(rockMm).toBeCloseTo(0, 9);
    },
  );
  test("on a rise of 8 mm it does not bridge; one end pressed down, the other rises four times that", () => {
    const { bridgeMm, rockMm } = unloadedOf(tree, backWith(bend, 0.07), 0);
    expect(bridgeMm).toBeCloseTo(0, 9);
    // 41 places: the first edge of what touches ends a fortieth of the length in.
    expect(rockMm).toBeCloseTo((4 * 8 * 39) / 40, 9);
  });
  test("of two ends that rise otherwise the larger lift is told, whichever it is", () => {
    const bump =
      (way: 1 | -1): SampleSurface =>
      (n, x, _y, out) => {
        for (let i = 0; i < n; i++) {
          const along = way * ((x[i] ?? 0) - LENGTH / 2);
          out.z[i] = -bend * along * along * (along > 0 ? 1 : 0.25);
        }
      };
    const [one, other] = [unloadedOf(tree, bump(1), 0), unloadedOf(tree, bump(-1), 0)];
    expect(one.rockMm).toBeCloseTo(other.rockMm, 9);
    // Along the steeper end's last edge the line falls 4 x 8 mm, less a fortieth, below its 8; the other end stands at 2.
    expect(one.rockMm).toBeCloseTo(2 - (8 - (32 * 39) / 40), 9);
  });
  test("where it lies moves it over the back", () => {
    const { rockMm, bridgeMm } = unloadedOf(tree, backWith(-bend, 0), 15);
    expect(bridgeMm).toBeCloseTo(8, 9);
    expect(rockMm).toBeCloseTo(0, 9);
  });
});

/** The gap is taken under the middle of each face, mean of both sides. */
describe("where the gap is taken", () => {
  const sloping = { ...straight, innerEdgeMm: () => 40, widthMm: () => 100, faceAngleRad: () => Math.PI / 3 };
  const onSlopes = { ...tree, halves: { near: sloping, off: sloping } };
  /** The middle of a face of 100 mm at 60 degrees, from 40 mm out: 40 + 50 cos 60. */
  const OUT_MM = 65;
  const hollow =
    (deep: (y: number) => number, middle = LENGTH / 2): SampleSurface =>
    (n, x, y, out) => {
      for (let i = 0; i < n; i++) {
        const along = ((x[i] ?? 0) - middle) / (LENGTH / 2);
        out.z[i] = deep(y[i] ?? 0) * (along * along - 1);
      }
    };
  test("a hollow that deepens outward is met 65 mm out", () => {
    const { bridgeMm } = unloadedOf(
      onSlopes,
      hollow((y) => (10 * Math.abs(y)) / OUT_MM),
      0,
    );
    expect(bridgeMm).toBeCloseTo(10, 9);
  });
  test("a hollow on the off side alone counts half", () => {
    expect(
      unloadedOf(
        onSlopes,
        hollow((y) => (y > 0 ? 12 : 0)),
        0,
      ).bridgeMm,
    ).toBeCloseTo(6, 9);
    expect(
      unloadedOf(
        onSlopes,
        hollow((y) => (y < 0 ? 12 : 0)),
        0,
      ).bridgeMm,
    ).toBeCloseTo(6, 9);
  });
  test("a saddle that lies further back meets what is further back", () => {
    const notch: SampleSurface = (n, x, _y, out) => {
      for (let i = 0; i < n; i++) out.z[i] = (x[i] ?? 0) > LENGTH + 5 ? 0 : -7;
    };
    expect(unloadedOf(onSlopes, notch, 0).bridgeMm).toBeCloseTo(0, 9);
    // Its last edges alone stand on the step, its front at the other end: between them the line rises over what lies 7 mm lower.
    const back = unloadedOf(onSlopes, notch, 20);
    expect(back.bridgeMm).toBeGreaterThan(6);
    expect(back.bridgeMm).toBeLessThan(7);
    expect(unloadedOf(onSlopes, notch, -20).bridgeMm).toBeCloseTo(0, 9);
  });
});

/** A bare point covers its straight part, at most the lower three fifths of the head, and nothing within 15 mm of the middle. */
describe("where a bare point is judged", () => {
  const asked = (depthMm: number, spreadMm: number, degrees: number) => {
    let seen: readonly number[] = [];
    const section: Section = {
      xMm: 0,
      widthOwnMm: 0,
      widthSharedMm: 0,
      faceAngleRad: (_side, from, to) => {
        seen = [from, to];
        return 0;
      },
      halfWidthMm: () => undefined,
      uncertain: [],
      outline: [],
    };
    const halfAngleRad = { near: degrees * DEGREE, off: degrees * DEGREE };
    sectionsOf(section, { ...ARMS_95, depthMm, spreadMm, halfAngleRad }, {});
    return seen;
  };
  test.each([
    [95, 205, 45, 102.5 - 57, 102.5],
    [75, 205, 45, 102.5 - 40, 102.5],
    [120, 140, 45, 15, 70],
  ])("%i mm deep, %i mm at the tips, %i degrees: %f to %f mm", (depth, spread, degrees, from, to) => {
    const [a, b] = asked(depth, spread, degrees);
    expect(a).toBeCloseTo(from, 9);
    expect(b).toBeCloseTo(to, 9);
  });
});
