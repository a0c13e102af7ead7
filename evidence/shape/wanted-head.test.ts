import { describe, expect, test } from "vitest";
import { fillNeededMm, sectionsOf } from "../../core/src/fit/sections.ts";
import { standsAtMm } from "../../core/src/fit/stands-at.ts";
import { buildBack, buildFront, isLacking } from "../../core/src/shape/back.ts";
import { buildHead } from "../../core/src/shape/head.ts";
import { headOutline, wantedOutline } from "../../core/src/shape/head-outline.ts";
import type { Head, Section, Tree } from "../../core/src/shape/model.ts";
import { buildTree } from "../../core/src/shape/tree.ts";
import { outsideSpreadMm, type WantedHead, wantedHead } from "../../core/src/shape/wanted-head.ts";
import { frontOnly, modelHorse } from "./model-back.ts";
import { FACES, modelSaddle } from "./model-saddle.ts";

const DEGREE = Math.PI / 180;

/** A back like a roof: each side falls at its own angle from a ridge, so that the wanted head is known in closed form. */
function roof(nearDegrees: number, offDegrees: number): Section {
  const points = Array.from({ length: 61 }, (_, i): [number, number] => {
    const y = -150 + 5 * i;
    return [y, -Math.abs(y) * Math.tan((y < 0 ? nearDegrees : offDegrees) * DEGREE)];
  });
  const section = buildFront(frontOnly(points), "cold");
  if (isLacking(section)) throw new Error(section.lacking.join(" "));
  return section;
}
const wanted = (section: Section, wish = { depthMm: 95, clearanceMm: 45, panelMm: 0 }): WantedHead => {
  const found = wantedHead(section, wish, {});
  if (isLacking(found)) throw new Error(found.lacking.join(" "));
  return found;
};

describe("the head that fits a roof", () => {
  test("laid on it: half-angle is what the roof leaves, half-spread what it is wide 50 mm down", () => {
    const head = wanted(roof(45, 45));
    expect(head.halfAngleRad / DEGREE).toBeCloseTo(45, 0);
    expect(Math.abs(head.spreadMm - 100)).toBeLessThan(1);
    expect(Math.abs(wanted(roof(50, 50)).halfAngleRad / DEGREE - 40)).toBeLessThan(0.5);
  });
  test("with a panel: wider by twice its thickness through the leg", () => {
    const [bare, dressed] = [
      wanted(roof(45, 45)),
      wanted(roof(45, 45), { depthMm: 95, clearanceMm: 45, panelMm: 20 }),
    ];
    expect(Math.abs(dressed.spreadMm - bare.spreadMm - 40 / Math.cos(45 * DEGREE))).toBeLessThan(0.8);
    expect(outsideSpreadMm(dressed, 9)).toBeCloseTo(
      dressed.spreadMm + 18 / Math.cos(dressed.halfAngleRad),
      9,
    );
  });
  test("more clearance makes it narrower", () => {
    expect(
      wanted(roof(45, 45), { depthMm: 95, clearanceMm: 50, panelMm: 0 }).spreadMm -
        wanted(roof(45, 45)).spreadMm,
    ).toBeCloseTo(-10, 0);
  });
  test("the larger side decides, never the mean", () => {
    const head = wanted(roof(50, 40));
    expect(head.larger).toBe("off");
    expect(head.spreadMm).toBeCloseTo(2 * wanted(roof(40, 40)).sides.off.halfSpreadMm, 0);
    expect(wanted(roof(40, 50)).larger).toBe("near");
    expect(wanted(roof(40, 50)).spreadMm).toBeCloseTo(head.spreadMm, 6);
  });
  test("answers to the doubt of the trace, both parts", () => {
    const section = roof(45, 45);
    const moved = wantedHead(
      section,
      { depthMm: 95, clearanceMm: 45, panelMm: 0 },
      { "flexible-curve.width.mm": 4, "flexible-curve.tilt.rad": 0 },
    );
    if (isLacking(moved)) throw new Error("lacking");
    expect(moved.spreadMm - wanted(section).spreadMm).toBeCloseTo(4, 0);
  });
  test("a trace or a head that is not deep enough is named", () => {
    const short = buildFront(
      frontOnly(
        Array.from({ length: 29 }, (_, i): [number, number] => [-70 + 5 * i, -0.2 * Math.abs(-70 + 5 * i)]),
      ),
      "cold",
    );
    if (isLacking(short)) throw new Error("lacking");
    expect(wantedHead(short, { depthMm: 95, clearanceMm: 45, panelMm: 0 }, {})).toEqual({
      lacking: ["traces.front.points"],
    });
    expect(wantedHead(roof(45, 45), { depthMm: 50, clearanceMm: 45, panelMm: 0 }, {})).toEqual({
      lacking: ["saddle.head.depth"],
    });
  });
});

describe("outlines of a head", () => {
  const head: Head = {
    spreadMm: 205,
    spreadUpperMm: undefined,
    upperBelowCrownMm: undefined,
    depthMm: 95,
    crownRadiusMm: 32,
    thicknessMm: 9,
    halfAngleRad: { near: 45 * DEGREE, off: 44 * DEGREE },
  };
  test("run from the crown to the tips, near to the left", () => {
    const { near, off } = headOutline(head, "inside");
    expect(off[0]).toEqual([0, 0]);
    expect(off[off.length - 1]).toEqual([102.5, -95]);
    expect(near[near.length - 1]).toEqual([-102.5, -95]);
    for (let i = 1; i < off.length; i++) expect(off[i]?.[1]).toBeLessThan((off[i - 1]?.[1] ?? 0) + 1e-9);
  });
  test("the arm has its half-angle, and the outside lies its thickness away from it", () => {
    const inside = headOutline(head, "inside").off;
    const outside = headOutline(head, "outside").off;
    const [a, b] = [inside[inside.length - 2], inside[inside.length - 1]];
    if (!a || !b) throw new Error("no arm");
    expect(Math.atan2(b[0] - a[0], a[1] - b[1]) / DEGREE).toBeCloseTo(44, 9);
    const tip = outside[outside.length - 1];
    const square =
      ((tip?.[0] ?? 0) - b[0]) * Math.cos(44 * DEGREE) + ((tip?.[1] ?? 0) - b[1]) * Math.sin(44 * DEGREE);
    expect(square).toBeCloseTo(9, 9);
    expect(outside[0]?.[1]).toBe(9);
  });
  test("the wanted one is the same on both sides", () => {
    const { near, off } = wantedOutline(wanted(roof(50, 40)), "inside", 9);
    expect(near).toEqual(off.map(([y, z]) => [-y, z]));
  });
});

describe("tree against back", () => {
  const whole = buildBack(modelHorse(), "cold");
  const belief = buildTree(modelSaddle());
  if (isLacking(whole) || isLacking(belief)) throw new Error("lacking");
  const tree = belief.at({});
  test("at every station and side; a tree that follows the back misses nothing", () => {
    const fits = sectionsOf(whole, tree, {});
    expect(fits.map(({ station, side }) => `${station} ${side}`)).toEqual([
      "front near",
      "front off",
      "mid near",
      "mid off",
      "rear near",
      "rear off",
    ]);
    const faces = fits.filter(({ side }) => side === "near").map(({ backFaceRad }) => backFaceRad / DEGREE);
    const follows = {
      front: { ...FACES.front, faceAngle: faces[0] ?? 0 },
      mid: { ...FACES.mid, faceAngle: faces[1] ?? 0 },
      rear: { ...FACES.rear, faceAngle: faces[2] ?? 0 },
    };
    const same = buildTree(modelSaddle({}, {}, follows));
    if (isLacking(same)) throw new Error("lacking");
    for (const fit of sectionsOf(whole, same.at({}), {}))
      expect(Math.abs(fit.misfitRad)).toBeLessThan(2.5 * DEGREE);
  });
  test("a steeper tree is positive: tight at the tip; and by as much", () => {
    const steeper = belief.at({ "protractor.angle.shared.1": 3 });
    const [before, after] = [sectionsOf(whole, tree, {}), sectionsOf(whole, steeper, {})];
    for (const [i, fit] of after.entries()) {
      expect(fit.misfitRad).toBeGreaterThan((before[i]?.misfitRad ?? 0) + 1.5 * DEGREE);
      expect(fit.treeFaceRad - (before[i]?.treeFaceRad ?? 0)).toBeCloseTo(3 * DEGREE, 9);
    }
  });
  test("a head alone is judged by its points at the front: 45 degrees to the upright on a roof of 45 misses nothing", () => {
    const head = buildHead(modelSaddle({ halfAngleNear: 45, halfAngleOff: 40 }));
    if (isLacking(head)) throw new Error("lacking");
    const fits = sectionsOf(roof(45, 45), head.at({}), {});
    expect(fits.map(({ station }) => station)).toEqual(["front", "front"]);
    expect(Math.abs((fits[0]?.misfitRad ?? 1) / DEGREE)).toBeLessThan(0.3);
    expect((fits[1]?.misfitRad ?? 0) / DEGREE).toBeCloseTo(5, 0);
  });
  test("fill: the width times the tangent of the misfit, on the side that needs it", () => {
    const flat: Tree = {
      ...tree,
      halves: { ...tree.halves, near: { ...tree.halves.near, widthMm: () => 90 } },
    };
    const misfit = (side: "near" | "off", degrees: number) => ({
      station: "front" as const,
      side,
      treeFaceRad: 0,
      backFaceRad: 0,
      misfitRad: degrees * DEGREE,
    });
    const fill = fillNeededMm([misfit("near", -5), misfit("off", 0)], whole, flat);
    // The trade's own example: 5 degrees over 90 mm is 7.9 mm.
    expect(fill.near).toBeCloseTo(7.9, 1);
    expect(fill.off).toBe(0);
  });
});

describe("where a head stands", () => {
  const head = (degrees: number, spreadMm: number): Head => ({
    spreadMm,
    spreadUpperMm: undefined,
    upperBelowCrownMm: undefined,
    depthMm: 95,
    crownRadiusMm: 32,
    thicknessMm: 9,
    halfAngleRad: { near: degrees * DEGREE, off: degrees * DEGREE },
  });
  const stands = (section: Section, one: Head, panelMm: number) => {
    const at = standsAtMm(section, one, panelMm, {});
    if (typeof at !== "number") throw new Error(at.lacking.join(" "));
    return at;
  };
  test("on a roof of its own angle: in closed form, with and without a panel", () => {
    // Tips 100 mm out on a roof of 45 degrees lie 100 mm below its ridge.
    expect(stands(roof(45, 45), head(45, 200), 0)).toBeCloseTo(-5, 0);
    expect(stands(roof(45, 45), head(45, 200), 20)).toBeCloseTo(-5 + 20 / Math.sin(45 * DEGREE), 0);
  });
  test("it rests on the larger side", () => {
    expect(stands(roof(50, 40), head(45, 200), 0)).toBeCloseTo(stands(roof(40, 40), head(45, 200), 0), 1);
  });
  test("the head wanted where it stands is the head itself when its angle is right, and opens by the angle that lacks", () => {
    const section = roof(45, 45);
    const differs = (one: Head) => {
      const found = wantedHead(
        section,
        { depthMm: 95, clearanceMm: stands(section, one, 20), panelMm: 20 },
        {},
      );
      if (isLacking(found)) throw new Error(found.lacking.join(" "));
      return found.spreadMm - one.spreadMm;
    };
    expect(Math.abs(differs(head(45, 205)))).toBeLessThan(0.5);
    expect(Math.abs(differs(head(45, 180)))).toBeLessThan(0.5);
    // Turned about the middle of its 60 mm straight part by what 41 degrees lack of 45.
    expect(differs(head(41, 205))).toBeCloseTo(60 * (Math.tan(45 * DEGREE) - Math.tan(41 * DEGREE)), 0);
  });
  test("a trace that ends too high is named", () => {
    const short = buildFront(
      frontOnly(
        Array.from({ length: 29 }, (_, i): [number, number] => [-70 + 5 * i, -0.2 * Math.abs(-70 + 5 * i)]),
      ),
      "cold",
    );
    if (isLacking(short)) throw new Error("lacking");
    expect(standsAtMm(short, head(45, 205), 0, {})).toEqual({ lacking: ["traces.front.points"] });
  });
});
