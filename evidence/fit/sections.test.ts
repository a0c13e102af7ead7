import { describe, expect, test } from "vitest";
import { fillAtMm, fillNeededMm, sectionsOf } from "../../core/src/fit/sections.ts";
import type { Back, Section } from "../../core/src/shape/model.ts";
import { inputsOf } from "../contact/model-case.ts";
import { ARMS_95, exactBack, treeOf } from "./model-forms.ts";

const DEGREE = Math.PI / 180;
const inputs = inputsOf("ct-horse-girth");
const [tree, back] = [treeOf(inputs), exactBack(inputs)];

/** A back that falls away as steeply everywhere, and what it was asked for. */
function slope(degrees: number, asked: number[][]): Section {
  return {
    xMm: 0,
    widthOwnMm: 0,
    widthSharedMm: 0,
    faceAngleRad: (_side, from, to) => {
      asked.push([from, to]);
      return degrees * DEGREE;
    },
    halfWidthMm: () => undefined,
    uncertain: [],
    outline: [],
  };
}

describe("a bare head against one section", () => {
  test("points of 60 and 50 degrees to the horizontal on a slope of 52: 8 degrees steep, 2 flat; judged over their straight part", () => {
    const asked: number[][] = [];
    const head = { ...ARMS_95, halfAngleRad: { near: 30 * DEGREE, off: 40 * DEGREE } };
    const fits = sectionsOf(slope(52, asked), head, {});
    expect(fits.map(({ side, misfitRad }) => [side, misfitRad / DEGREE])).toEqual([
      ["near", expect.closeTo(8, 9)],
      ["off", expect.closeTo(-2, 9)],
    ]);
    // Straight are the lower three fifths of 95 mm, 57 mm high: they reach inward by 57 tan 30 and 57 tan 40.
    const inner = [30, 40].map((degrees) => 102.5 - 57 * Math.tan(degrees * DEGREE));
    expect(asked).toEqual(inner.map((from) => [expect.closeTo(from, 9), 102.5]));
  });
});

describe("fill", () => {
  const at = (side: "near" | "off", station: "front" | "mid", degrees: number) => {
    const misfitRad = degrees * DEGREE;
    return { station, side, treeFaceRad: misfitRad, backFaceRad: 0, misfitRad };
  };
  const widthAt = (sections: Back["sections"], station: "front" | "mid") =>
    tree.halves.near.widthMm(sections[station].xMm);
  test("is the face's width times the tangent of the misfit, whichever way it goes", () => {
    for (const degrees of [3, -3])
      expect(fillAtMm(at("near", "front", degrees), back, tree)).toBeCloseTo(
        widthAt(back.sections, "front") * Math.tan(3 * DEGREE),
        9,
      );
  });
  test("of a side is the most over its stations, of its own and not the other's; of none it is nothing", () => {
    const fits = [at("near", "front", 2), at("near", "mid", -4), at("off", "front", 1)];
    expect(fillNeededMm(fits, back, tree)).toEqual({
      near: expect.closeTo(widthAt(back.sections, "mid") * Math.tan(4 * DEGREE), 9),
      off: expect.closeTo(widthAt(back.sections, "front") * Math.tan(1 * DEGREE), 9),
    });
    expect(fillNeededMm([], back, tree)).toEqual({ near: 0, off: 0 });
  });
});
