import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { stripCells } from "../../core/src/engine/contact/strip-cells.ts";
import { FACE_BOW_PER_MM } from "../../core/src/fit/assumed.ts";
import { panelCells } from "../../core/src/fit/panel-cells.ts";
import type { TurnBelief } from "../../core/src/reach/setting.ts";
import { halfTurnRad, treeAt, turnLeft } from "../../core/src/reach/turn.ts";
import type { Tree } from "../../core/src/shape/model.ts";
import { SIDES, STATIONS } from "../../core/src/terms/places.ts";
import { propertySeed } from "../number/seed.ts";
import { chordAt, LENGTH, RAIL, sagAt, straightTree } from "./straight-tree.ts";

/*
 * The whole tree that a setting makes, against the rule in words and a second construction of the same cells. That a
 * real tree moves so cannot be seen here: the hinge, the fading and the rear's part are assumptions until a frame is solved.
 */
const seed = propertySeed("reach");
const DEGREE = Math.PI / 180;
const TURN: TurnBelief = { hingePart: 0.84, rearPart: 0.15, fade: 1.25 };
const XS = [0, 60, 140, 200, 290, 380, LENGTH];
const press = (changeMm: number) => ({ changeMm, halfTurnRad: undefined });
const moved = (tree: Tree, changeMm: number, turn = TURN) => treeAt(tree, press(changeMm), turn);
/** Middle of a face across, mm. */
const middle = (tree: Tree, x: number, side: (typeof SIDES)[number] = "near") => {
  const half = tree.halves[side];
  return half.innerEdgeMm(x) + (half.widthMm(x) / 2) * Math.cos(half.faceAngleRad(x));
};
/** Everything of a tree that a move touches, as numbers. */
const numbersOf = (tree: Tree) => [
  tree.tipHeightMm,
  tree.crownHeightMm,
  tree.head.spreadMm,
  tree.head.depthMm,
  ...SIDES.map((side) => tree.head.halfAngleRad[side]),
  ...STATIONS.map((station) => tree.channelMm[station] ?? Number.NaN),
  ...SIDES.flatMap((side) =>
    XS.flatMap((x) => [
      tree.halves[side].innerEdgeMm(x),
      tree.halves[side].heightMm(x),
      tree.halves[side].faceAngleRad(x),
      tree.halves[side].widthMm(x),
    ]),
  ),
];

describe("the turn of a half", () => {
  test.each([
    // Half the change over D as the sides of a right-angled triangle with a known angle.
    [2 * 80, 80, 45],
    [(2 * 80) / Math.sqrt(3), 80, 30],
    [-2 * 80 * Math.sqrt(3), 80, -60],
    [10, 95, 3.0128],
  ])("%f mm at the tips over %f mm: %f degrees", (changeMm, hingeToTipsMm, deg) => {
    expect(halfTurnRad(changeMm, hingeToTipsMm) / DEGREE).toBeCloseTo(deg, 4);
    expect(Math.abs(halfTurnRad(1.05 * changeMm, hingeToTipsMm) / DEGREE - deg)).toBeGreaterThan(0.05);
  });
  test("its hinge lies a part of the crown's height over the tips, from 0.68 to 1.0", () => {
    for (const hingePart of [0.68, 0.84, 1]) {
      const { head } = moved(straightTree(), 10, { ...TURN, hingePart });
      expect(head.halfAngleRad.near - 45 * DEGREE).toBeCloseTo(Math.atan(5 / (hingePart * 95)), 12);
    }
  });
});

describe("along the rail", () => {
  test.each([
    // By hand: r + (1 - r)(1 - xi)^n.
    [0, 0.15, 1.5, 1],
    [LENGTH, 0.15, 1.5, 0.15],
    [LENGTH, 0.27, 1, 0.27],
    [LENGTH / 2, 0.2, 1, 0.6],
    [(3 * LENGTH) / 4, 0.2, 1.5, 0.3],
    [-30, 0.15, 1.25, 1],
    [LENGTH + 30, 0.15, 1.25, 0.15],
  ])("at %f mm with %f kept at the rear and exponent %f, %f of it is left", (x, rearPart, fade, left) => {
    expect(turnLeft(x, LENGTH, { hingePart: 1, rearPart, fade })).toBeCloseTo(left, 12);
  });
  test("each section turns by what is left there, and its width stays", () => {
    const [today, after] = [straightTree(), moved(straightTree(), 12)];
    const front = Math.atan(6 / (0.84 * 95));
    for (const x of XS) {
      const turned = today.halves.off.faceAngleRad(x) - after.halves.off.faceAngleRad(x);
      expect(turned).toBeCloseTo(front * (0.15 + 0.85 * (1 - x / LENGTH) ** 1.25), 12);
      expect(after.halves.off.widthMm(x)).toBe(today.halves.off.widthMm(x));
    }
  });
  /*
   * Where the turn fades evenly (exponent 1) and the rail hangs from a straight line, each section's shift is a
   * quadratic of x (the line's distance from the hinge times the turn) plus the sag times the turn.
   */
  test("a rail shifts by a quadratic plus its sag times the turn", () => {
    const even = { ...TURN, fade: 1 };
    const today = straightTree();
    const small = 1e-3;
    const after = moved(today, small, even);
    const turnAt = (x: number) => (small / 2 / (0.84 * 95)) * turnLeft(x, LENGTH, even);
    const hinge = today.tipHeightMm + 0.84 * 95;
    const rest = XS.map((x) => middle(after, x) - middle(today, x) - sagAt(RAIL, x) * turnAt(x));
    for (const [i, x] of XS.entries())
      expect((rest[i] ?? 0) / small).toBeCloseTo(((hinge - chordAt(RAIL, x)) * turnAt(x)) / small, 5);
    const [a = 0, b = 0, c = 0, d = 0] = [0, 100, 200, 300].map(
      (x) => (middle(after, x) - middle(today, x) - sagAt(RAIL, x) * turnAt(x)) / small,
    );
    expect(d - 3 * c + 3 * b - a).toBeCloseTo(0, 5);
    expect(Math.abs(c - 2 * b + a)).toBeGreaterThan(1e-3);
    // The sag counts: without it the whole would be a quadratic too.
    const [e = 0, f = 0, g = 0, h = 0] = [0, 100, 200, 300].map(
      (x) => (middle(after, x) - middle(today, x)) / small,
    );
    expect(Math.abs(h - 3 * g + 3 * f - e)).toBeGreaterThan(1e-3);
  });
});

describe("the whole tree", () => {
  test("no change leaves it as it is, to the last digit", () => {
    const today = straightTree();
    expect(numbersOf(moved(today, 0))).toEqual(numbersOf(today));
    expect(moved(today, 0).head).toEqual(today.head);
  });
  test("opening carries the tips out and up toward a crown that stays; what was read at the upper level is void", () => {
    const today = straightTree();
    const { head, tipHeightMm, crownHeightMm } = moved(today, 10);
    expect(head.spreadMm).toBe(215);
    expect(crownHeightMm).toBe(today.crownHeightMm);
    expect(tipHeightMm + head.depthMm).toBeCloseTo(crownHeightMm, 12);
    // A tip turned about its hinge: from (102.5, -79.8) by atan(5 / 79.8).
    const turn = Math.atan(5 / 79.8);
    expect(tipHeightMm - today.tipHeightMm).toBeCloseTo(
      102.5 * Math.sin(turn) + 79.8 * (1 - Math.cos(turn)),
      10,
    );
    expect(head.spreadUpperMm).toBeUndefined();
  });
  test("the channel follows the inner edges of both halves at each station", () => {
    const today = straightTree();
    for (const change of [8, -8]) {
      const after = moved(today, change);
      for (const station of STATIONS) {
        const x = today.stationsMm[station];
        const widened = SIDES.reduce(
          (sum, side) => sum + after.halves[side].innerEdgeMm(x) - today.halves[side].innerEdgeMm(x),
          0,
        );
        expect((after.channelMm[station] ?? 0) - (today.channelMm[station] ?? 0)).toBeCloseTo(widened, 10);
        expect(Math.sign(widened)).toBe(Math.sign(change));
      }
    }
    const unread = { ...today, channelMm: { ...today.channelMm, mid: undefined } };
    expect(moved(unread, 8).channelMm.mid).toBeUndefined();
  });
  test("a plate moves the head by its own angle, and spreads the rest without turning", () => {
    const today = straightTree();
    const turn = 2 * DEGREE;
    const after = treeAt(today, { changeMm: 10, halfTurnRad: turn }, { ...TURN, hingePart: 1 });
    expect(after.head.halfAngleRad.near).toBeCloseTo(47 * DEGREE, 12);
    expect(after.head.spreadMm).toBe(215);
    const apart = 5 - 95 * Math.tan(turn);
    const lever = today.crownHeightMm - today.halves.near.heightMm(0);
    const turnedOnly = middle(today, 0) * Math.cos(turn) + lever * Math.sin(turn);
    expect(middle(after, 0)).toBeCloseTo(turnedOnly + apart, 10);
    const wider = treeAt(today, { changeMm: 10, halfTurnRad: 0 }, TURN);
    expect(wider.halves.near.innerEdgeMm(0) - today.halves.near.innerEdgeMm(0)).toBeCloseTo(5, 12);
    expect(wider.tipHeightMm).toBe(today.tipHeightMm);
    expect(wider.halves.near.innerEdgeMm(LENGTH) - today.halves.near.innerEdgeMm(LENGTH)).toBeCloseTo(
      0.15 * 5,
      12,
    );
  });
  test("there and back again leaves only what is of second order in the change", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 8, noNaN: true }),
        fc.double({ min: 0.68, max: 1, noNaN: true }),
        fc.double({ min: 1, max: 1.5, noNaN: true }),
        (change, hingePart, fade) => {
          const turn = { ...TURN, hingePart, fade };
          const today = straightTree();
          const left = (mm: number) => {
            const back = numbersOf(moved(moved(today, mm, turn), -mm, turn));
            return Math.max(...back.map((value, i) => Math.abs(value - (numbersOf(today)[i] ?? 0))));
          };
          const [whole, half] = [left(change), left(change / 2)];
          // Of second order: half the change leaves a quarter. Of first order it would leave a half.
          expect(whole / half).toBeGreaterThan(3.3);
          expect(whole).toBeLessThan(0.02 * change * change);
        },
      ),
      { seed, numRuns: 60 },
    );
  });
});

/** A second way: the strips' own turn, made for the reference cases, about the hinge. */
test("turned strips and the turned tree have the same cells", () => {
  const today = straightTree({}, RAIL, { ...RAIL, innerEdge: 41, fallDeg: [45, -20, 6], sag: 12 });
  const mesh = { nx: 12, nv: 8 };
  for (const change of [-20, -7, 6, 20]) {
    const after = panelCells(moved(today, change), mesh);
    const hingeToTips = 0.84 * today.head.depthMm;
    const strip = (side: "near" | "off") => {
      const half = today.halves[side];
      return {
        innerEdge: half.innerEdgeMm,
        width: half.widthMm,
        faceAngle: half.faceAngleRad,
        height: half.heightMm,
        thickness: () => 25,
      };
    };
    const turned = stripCells({
      length: LENGTH,
      ...mesh,
      low: strip("near"),
      high: strip("off"),
      faceCurvature: FACE_BOW_PER_MM,
      turn: (x) => Math.atan(change / 2 / hingeToTips) * (0.15 + 0.85 * (1 - x / LENGTH) ** 1.25),
      turnHeight: today.tipHeightMm + hingeToTips,
    });
    const apart = (key: "x" | "y" | "z" | "area") =>
      Math.max(...after[key].map((value, i) => Math.abs(value - (turned[key][i] ?? Number.NaN))));
    for (const key of ["x", "y", "z", "area"] as const) expect(apart(key)).toBeLessThan(1e-9);
    // The same check of a change 5 % off is red.
    const other = panelCells(moved(today, 1.05 * change), mesh);
    expect(Math.max(...other.y.map((value, i) => Math.abs(value - (turned.y[i] ?? 0))))).toBeGreaterThan(0.1);
  }
});
