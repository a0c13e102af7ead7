import { describe, expect, test } from "vitest";
import { panelFace } from "../../core/src/shape/faces.ts";
import { STATIONS } from "../../core/src/terms/places.ts";
import { filledTree, NO_FILL } from "../../core/src/work/panel/fill.ts";
import { wedgesOf } from "../../core/src/work/panel/wedge.ts";
import { draftOf, EVEN, panelCase } from "./panel-case.ts";

const DEGREE = Math.PI / 180;

describe("wedge and fill", () => {
  test("bare face and wedge make the face; of a face built from rail and panel the rail comes back", () => {
    const thickness = { inner: 18, middle: 22, outer: 27 };
    const rail = { innerEdgeMm: 38, widthMm: 104, faceAngleRad: 0.6, heightMm: -80 };
    const face = panelFace(rail, thickness);
    const half = {
      innerEdgeMm: () => face.innerEdgeMm,
      widthMm: () => face.widthMm,
      faceAngleRad: () => face.faceAngleRad,
      heightMm: () => face.heightMm,
      thicknessMm: { front: thickness, mid: thickness, rear: thickness },
    };
    const { tree } = panelCase(draftOf(EVEN, () => {}));
    for (const wedge of wedgesOf({ ...tree, halves: { near: half, off: half } })) {
      expect(wedge.bareRad).toBeCloseTo(rail.faceAngleRad, 12);
      expect(wedge.wedgeRad + wedge.bareRad).toBeCloseTo(face.faceAngleRad, 12);
      expect(wedge.wedgeRad / DEGREE).toBeCloseTo(4.946, 2);
    }
  });
  test("a fill moves the face out and turns it; nothing filled moves nothing", () => {
    const { tree } = panelCase(draftOf(EVEN, () => {}));
    const at = { inner: 2, middle: 5, outer: 8 };
    const filled = filledTree(tree, { ...NO_FILL, near: { front: at, mid: at, rear: at } });
    for (const station of STATIONS) {
      const x = tree.stationsMm[station];
      const [was, is] = [tree.halves.near, filled.halves.near];
      expect(is.thicknessMm[station].outer - was.thicknessMm[station].outer).toBe(8);
      expect(Math.tan(is.faceAngleRad(x) - was.faceAngleRad(x)) * was.widthMm(x)).toBeCloseTo(6, 9);
      expect(was.heightMm(x) - is.heightMm(x)).toBeCloseTo(5 * Math.cos(was.faceAngleRad(x)), 9);
      expect(filled.halves.off.heightMm(x)).toBe(tree.halves.off.heightMm(x));
      expect(filledTree(tree, NO_FILL).halves.near.faceAngleRad(x)).toBe(was.faceAngleRad(x));
    }
  });
});
