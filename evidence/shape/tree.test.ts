import { describe, expect, test } from "vitest";
import { isLacking } from "../../core/src/shape/back.ts";
import { Doubts } from "../../core/src/shape/doubt.ts";
import { panelFace, throughLegMm } from "../../core/src/shape/faces.ts";
import { buildHead } from "../../core/src/shape/head.ts";
import type { TreeBelief } from "../../core/src/shape/model.ts";
import { buildPlate } from "../../core/src/shape/plate.ts";
import { buildTree } from "../../core/src/shape/tree.ts";
import type { SurveyedSaddle } from "../../core/src/survey/case.ts";
import type { Reading } from "../../core/src/survey/reading.ts";
import { plateSchema } from "../../core/src/survey/saddle-plates.ts";
import { FACES, HEAD, modelSaddle } from "./model-saddle.ts";

const DEGREE = Math.PI / 180;
type Vector = readonly [number, number];

function belief(saddle: SurveyedSaddle): TreeBelief {
  const built = buildTree(saddle);
  if (isLacking(built)) throw new Error(built.lacking.join(" "));
  return built;
}
const tree = (saddle: SurveyedSaddle) => belief(saddle).at({});
const headAt = (saddle: SurveyedSaddle) => {
  const built = buildHead(saddle);
  if (isLacking(built)) throw new Error(built.lacking.join(" "));
  return built.at({});
};

describe("outside and inside of a head", () => {
  test("a leg is t / cos(a) thick along the horizontal: measured between its two drawn edges", () => {
    const [t, a] = [9, 41 * DEGREE];
    // Two points of the inner edge, and the outer edge drawn t away from it, square to the leg.
    const along: Vector = [Math.sin(a), -Math.cos(a)];
    const square: Vector = [Math.cos(a), Math.sin(a)];
    const outer: Vector = [50 + t * square[0], -60 + t * square[1]];
    const back = (-60 - outer[1]) / along[1];
    expect(throughLegMm(t, a)).toBeCloseTo(outer[0] + back * along[0] - 50, 10);
  });
  test("a spread read outside becomes the inside one, each half by its own angle", () => {
    const outside = headAt(modelSaddle({ face: "outside" }));
    expect(outside.spreadMm).toBeCloseTo(205 - 9 / Math.cos(45 * DEGREE) - 9 / Math.cos(44 * DEGREE), 9);
    expect(outside.spreadUpperMm).toBeCloseTo(110 - (205 - outside.spreadMm), 9);
    expect(headAt(modelSaddle()).spreadMm).toBe(205);
  });
  test("an outside spread without a thickness is refused; so is a face nobody named", () => {
    expect(buildHead(modelSaddle({ face: "outside", thickness: "not-looked" }))).toEqual({
      lacking: ["saddle.head.thickness"],
    });
    expect(buildHead(modelSaddle({ face: "not-said", spreadTips: "cannot-be-seen" }))).toEqual({
      lacking: ["saddle.head.face", "saddle.head.spreadTips"],
    });
  });
  test("where only crown or thickness are missing on an inside reading, an assumption is drawn and named as one", () => {
    const built = buildHead(modelSaddle({ crownRadius: "not-looked", thickness: "not-looked" }));
    if (isLacking(built)) throw new Error("lacking");
    const assumed = built.uncertain.filter(({ id }) => id.includes(".assumed."));
    expect(assumed.map(({ id, kind }) => [id, kind])).toEqual([
      ["saddle.head.crownRadius.assumed.mm", "range"],
      ["saddle.head.thickness.assumed.mm", "range"],
    ]);
  });
});

describe("a panel under a rail", () => {
  const rail = { innerEdgeMm: 60, widthMm: 50, faceAngleRad: 30 * DEGREE, heightMm: -40 };
  test("an even panel moves the face along its normal and keeps its angle", () => {
    const face = panelFace(rail, { inner: 20, middle: 20, outer: 20 });
    expect(face).toEqual({
      innerEdgeMm: 60 - 20 * Math.sin(30 * DEGREE),
      widthMm: 50,
      faceAngleRad: rail.faceAngleRad,
      heightMm: -40 - 20 * Math.cos(30 * DEGREE),
    });
  });
  test("a wedge's face runs through the two edges that its thickness puts down", () => {
    const [inner, outer] = [15, 25];
    const face = panelFace(rail, { inner, middle: 20, outer });
    const down: Vector = [-Math.sin(rail.faceAngleRad), -Math.cos(rail.faceAngleRad)];
    const along: Vector = [Math.cos(rail.faceAngleRad), -Math.sin(rail.faceAngleRad)];
    const a: Vector = [inner * down[0], inner * down[1]];
    const b: Vector = [50 * along[0] + outer * down[0], 50 * along[1] + outer * down[1]];
    expect(face.faceAngleRad).toBeCloseTo(Math.atan2(a[1] - b[1], b[0] - a[0]), 10);
    expect(face.widthMm).toBeCloseTo(Math.hypot(b[0] - a[0], b[1] - a[1]), 10);
    expect(face.innerEdgeMm - 60).toBeCloseTo(a[0], 10);
    // Thicker outside: steeper.
    expect(face.faceAngleRad).toBeGreaterThan(rail.faceAngleRad + 10 * DEGREE);
  });
  test("a tree read on its rails is the one read on its panel's face", () => {
    const rails = tree(modelSaddle({}, { face: "rail" }));
    const mid = rails.halves.near;
    expect(mid.faceAngleRad(200)).toBeCloseTo(30 * DEGREE + Math.atan(2 / 112), 9);
    expect(mid.heightMm(200)).toBeCloseTo(-52 - 30 * Math.cos(30 * DEGREE), 9);
  });
});

describe("a tree", () => {
  const built = belief(modelSaddle());
  const today = built.at({});
  test("goes through its readings at the stations its readings imply, smooth between", () => {
    expect(today.stationsMm).toEqual({ front: 0, mid: 200, rear: 390 });
    const { near } = today.halves;
    for (const [station, x] of [
      ["front", 0],
      ["mid", 200],
      ["rear", 390],
    ] as const) {
      expect(near.innerEdgeMm(x)).toBeCloseTo(FACES[station].innerEdge, 9);
      expect(near.widthMm(x)).toBeCloseTo(FACES[station].width, 9);
      expect(near.faceAngleRad(x) / DEGREE).toBeCloseTo(FACES[station].faceAngle, 9);
      expect(near.heightMm(x)).toBeCloseTo(-FACES[station].underStraightEdge, 9);
      expect(near.thicknessMm[station]).toEqual({
        inner: FACES[station].inner,
        middle: FACES[station].middle,
        outer: FACES[station].outer,
      });
    }
    // A quadratic's third difference is nothing.
    const [a, b, c, d] = [50, 100, 150, 200].map((x) => near.faceAngleRad(x));
    expect((d ?? 0) - 3 * (c ?? 0) + 3 * (b ?? 0) - (a ?? 0)).toBeCloseTo(0, 12);
  });
  test("a panel that tapers fast ends narrow, and not at less than nothing", () => {
    const narrow = belief(modelSaddle({}, {}, { ...FACES, rear: { ...FACES.rear, width: 26 } })).at({});
    // The quadratic through 105, 112 and 26 mm would be below zero at the panel's end.
    expect(narrow.halves.near.widthMm(430)).toBe(10);
    expect(narrow.halves.near.widthMm(390)).toBeCloseTo(26, 9);
  });
  test("its crown is a depth above its tips, which lie on the panel's back", () => {
    expect(today.crownHeightMm - today.tipHeightMm).toBeCloseTo(95, 9);
    const face = 42 * DEGREE;
    const middle = 40 + 52.5 * Math.cos(face);
    expect(today.tipHeightMm).toBeCloseTo(-70 - (102.5 - middle) * Math.tan(face) + 25 / Math.cos(face), 9);
  });
  test("every uncertain input is listed once, each instrument's shared part among them", () => {
    const ids = built.uncertain.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of [
      "ruler.length.shared.1",
      "calliper.length.shared.1",
      "protractor.angle.shared.1",
      "saddle.bearing.mid.off.faceAngle.rad",
      "saddle.head.spreadTips.mm",
    ])
      expect(ids).toContain(id);
  });
  test("an own deviation moves its reading only; a shared one all of its instrument", () => {
    const own = built.at({ "saddle.bearing.mid.off.faceAngle.rad": 0.01 });
    expect(own.halves.off.faceAngleRad(200) - today.halves.off.faceAngleRad(200)).toBeCloseTo(0.01, 12);
    expect(own.halves.near.faceAngleRad(200)).toBe(today.halves.near.faceAngleRad(200));
    // A protractor's shared standard uncertainty is 1 degree (assumption, in the instrument records).
    const shared = built.at({ "protractor.angle.shared.1": 0.01 / DEGREE });
    for (const side of ["near", "off"] as const) {
      for (const x of [0, 137, 390])
        expect(shared.halves[side].faceAngleRad(x) - today.halves[side].faceAngleRad(x)).toBeCloseTo(
          0.01,
          12,
        );
      expect(shared.head.halfAngleRad[side] - today.head.halfAngleRad[side]).toBeCloseTo(0.01, 12);
    }
    expect(shared.head.spreadMm).toBe(today.head.spreadMm);
  });
  test("one instrument's error moves each reading by that reading's own part, whichever was listed first", () => {
    const reading = (value: number, shared: number): Reading => ({
      kind: "length",
      value,
      own: 1,
      shared,
      instrument: "calliper",
      typed: String(value),
      unit: "mm",
      repeats: [],
    });
    const doubts = new Doubts();
    const [exact, bare, dressed] = [0, 0.2, 0.5].map((shared) =>
      doubts.take(`part-${shared}`, reading(100, shared)),
    );
    const id = "calliper.length.shared.1";
    expect(doubts.uncertain.find((one) => one.id === id)).toEqual({ id, kind: "normal", mean: 0, sd: 1 });
    expect([exact, bare, dressed].map((drawn) => drawn?.({ [id]: 2 }))).toEqual([100, 100.4, 101]);
  });
  test("what is missing is named, all of it", () => {
    const holes = modelSaddle(
      { depth: "not-asked" },
      {
        strapOff: "not-looked",
        mid: { near: FACES.mid, off: { ...FACES.mid, faceAngle: "cannot-be-seen" } },
      },
    );
    expect(buildTree(holes)).toEqual({
      lacking: ["saddle.head.depth", "saddle.bearing.mid.off.faceAngle", "saddle.bearing.strapOff"],
    });
    expect(buildTree(modelSaddle({}, { face: "not-said" }))).toEqual({ lacking: ["saddle.bearing.face"] });
  });
  test("a mirrored saddle has a mirrored tree", () => {
    const lopsided = modelSaddle(
      { halfAngleNear: 47, halfAngleOff: 43 },
      { front: { near: { ...FACES.front, faceAngle: 39 }, off: FACES.front } },
    );
    const other = modelSaddle(
      { halfAngleNear: 43, halfAngleOff: 47 },
      { front: { near: FACES.front, off: { ...FACES.front, faceAngle: 39 } } },
    );
    const [there, mirror] = [tree(lopsided), tree(other)];
    expect(mirror.halves.off.faceAngleRad(70)).toBeCloseTo(there.halves.near.faceAngleRad(70), 12);
    expect(mirror.head.halfAngleRad.off).toBe(there.head.halfAngleRad.near);
    expect(mirror.tipHeightMm).toBeCloseTo(there.tipHeightMm, 12);
  });
});

describe("a plate at hand", () => {
  const plate = (more: object) => plateSchema.parse({ spreadTips: 215, halfAngle: 46, ...more });
  const built = (more: object, head: object = {}) => {
    const found = buildPlate(plate(more), 2, modelSaddle(head));
    if (isLacking(found)) throw new Error(found.lacking.join(" "));
    return found;
  };
  test("measured loose it stands for the fitted head with 2 mm more doubt", () => {
    expect(built({}).uncertain.find(({ id }) => id === "platesAtHand.2.loose.mm")).toMatchObject({ sd: 2 });
    expect(built({ asFitted: "yes" }).uncertain.some(({ id }) => id.includes("loose"))).toBe(false);
    expect(built({}).at({ "platesAtHand.2.loose.mm": 3 }).spreadMm).toBe(218);
  });
  test("read on the outside face it is turned into the inside spread", () => {
    const { spreadMm, halfAngleRad } = built({ asFitted: "yes" }, { face: "outside" }).at({});
    expect(spreadMm).toBeCloseTo(215 - (2 * HEAD.thickness) / Math.cos(46 * DEGREE), 9);
    expect(halfAngleRad).toBeCloseTo(46 * DEGREE, 12);
  });
  test("without a spread it is no head", () => {
    expect(buildPlate(plate({ spreadTips: "not-looked" }), 0, modelSaddle())).toEqual({
      lacking: ["platesAtHand.0.spreadTips"],
    });
  });
});
