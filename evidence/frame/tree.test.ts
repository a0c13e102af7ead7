import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { panelCells } from "../../core/src/fit/panel-cells.ts";
import { frameFigures } from "../../core/src/reach/frame/figures.ts";
import { halfTurnRad, leverOfHead, leverOfTree } from "../../core/src/reach/frame/head-move.ts";
import { lockedIn } from "../../core/src/reach/frame/locked.ts";
import { travelOf } from "../../core/src/reach/frame/travel.ts";
import { keepsOf, treeAt } from "../../core/src/reach/frame/tree-at.ts";
import { beamsOf } from "../../core/src/reach/frame/tree-frame.ts";
import { drawDeviations } from "../../core/src/shape/draw.ts";
import type { Tree } from "../../core/src/shape/model.ts";
import { SIDES, STATIONS } from "../../core/src/terms/places.ts";
import { propertySeed } from "../number/seed.ts";
import { LENGTH, RAIL, straightTree } from "../reach/straight-tree.ts";
import { beliefOf, LAMINATED, MOULDED, opened, press, travelled } from "./moved.ts";

/*
 * The whole tree that a setting makes, out of the frame. That a real tree has these sections, and one hinge a side,
 * cannot be seen here: sections nobody read are drawn over their ranges, and the cantle's deck decides what the rear does.
 */
const seed = propertySeed("tree");
const DEGREE = Math.PI / 180;
const XS = [0, 60, 140, 200, 290, 380, LENGTH];
const middle = (tree: Tree, x: number, side: (typeof SIDES)[number] = "near") => {
  const half = tree.halves[side];
  return half.innerEdgeMm(x) + (half.widthMm(x) / 2) * Math.cos(half.faceAngleRad(x));
};
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
const most = (values: readonly number[]) => Math.max(...values.map(Math.abs));

describe("the whole tree", () => {
  test("no change leaves it as it is, to the last digit", () => {
    const today = straightTree();
    expect(numbersOf(opened(today, 0))).toEqual(numbersOf(today));
  });
  test("opening carries the tips out and up toward a crown that stays; what was read at the upper level is void", () => {
    const today = straightTree();
    const travel = travelled(today);
    const { head, tipHeightMm, crownHeightMm } = treeAt(travel, press(10));
    expect(head.spreadMm).toBe(215);
    expect(crownHeightMm).toBe(today.crownHeightMm);
    expect(tipHeightMm + head.depthMm).toBeCloseTo(crownHeightMm, 12);
    expect(head.halfAngleRad.near - 45 * DEGREE).toBeCloseTo(halfTurnRad(10, leverOfTree(travel)), 12);
    expect(tipHeightMm - today.tipHeightMm).toBeGreaterThan(3);
    expect(tipHeightMm - today.tipHeightMm).toBeLessThan(6);
    expect(head.spreadUpperMm).toBeUndefined();
  });
  test("the bearing face at the front turns as the points do, and as far as their finite turn carries it within 0.6 mm at 20", () => {
    const today = straightTree();
    for (const change of [-20, -10, 10, 20]) {
      const travel = travelled(today);
      const after = treeAt(travel, press(change));
      const turn = after.head.halfAngleRad.off - today.head.halfAngleRad.off;
      expect(today.halves.off.faceAngleRad(0) - after.halves.off.faceAngleRad(0)).toBeCloseTo(turn, 12);
      const { downMm, outMm } = leverOfTree(travel);
      const [y, z] = [
        middle(today, 0) - (102.5 - outMm),
        today.halves.off.heightMm(0) - (today.tipHeightMm + downMm),
      ];
      const finite = y * Math.cos(turn) - z * Math.sin(turn) - y;
      expect(Math.abs(middle(after, 0, "off") - middle(today, 0) - finite)).toBeLessThan(0.6);
      const up = y * Math.sin(turn) + z * Math.cos(turn) - z;
      expect(Math.abs(after.halves.off.heightMm(0) - today.halves.off.heightMm(0) - up)).toBeLessThan(0.6);
    }
  });
  test("the channel follows the inner edges of both halves at each station", () => {
    const today = straightTree();
    for (const change of [8, -8]) {
      const after = opened(today, change);
      for (const station of STATIONS) {
        const x = today.stationsMm[station];
        const widened = SIDES.reduce(
          (sum, side) => sum + after.halves[side].innerEdgeMm(x) - today.halves[side].innerEdgeMm(x),
          0,
        );
        expect((after.channelMm[station] ?? 0) - (today.channelMm[station] ?? 0)).toBeCloseTo(widened, 10);
        if (station !== "rear") expect(Math.sign(widened)).toBe(Math.sign(change));
      }
    }
    const unread = { ...today, channelMm: { ...today.channelMm, mid: undefined } };
    expect(opened(unread, 8).channelMm.mid).toBeUndefined();
  });
  test("a plate moves the head by its own angle and spread, and the faces at the front with it", () => {
    const today = straightTree();
    const travel = travelled(today, { hingeOffMm: 0 });
    const after = treeAt(travel, { changeMm: 10, halfTurnRad: 2 * DEGREE });
    expect(after.head.halfAngleRad.near).toBeCloseTo(47 * DEGREE, 12);
    expect(after.head.spreadMm).toBe(215);
    expect(today.halves.near.faceAngleRad(0) - after.halves.near.faceAngleRad(0)).toBeCloseTo(2 * DEGREE, 12);
    const wider = treeAt(travel, { changeMm: 10, halfTurnRad: 0 });
    expect(wider.halves.near.faceAngleRad(0)).toBeCloseTo(today.halves.near.faceAngleRad(0), 12);
    expect(middle(wider, 0) - middle(today, 0)).toBeCloseTo(5, 9);
    // A plate whose angle is what its spread asks for is a press about the same hinge.
    const turn = halfTurnRad(10, leverOfTree(travel));
    const same = treeAt(travel, { changeMm: 10, halfTurnRad: turn });
    expect(
      most(numbersOf(same).map((v, i) => v - (numbersOf(treeAt(travel, press(10)))[i] ?? 0))),
    ).toBeLessThan(1e-9);
  });
  test("a mirrored tree is moved as the mirror image; each half by itself adds up", () => {
    const other = { ...RAIL, innerEdge: 41, fallDeg: [45, -20, 6], sag: 12 } as const;
    const [there, here] = [
      opened(straightTree({}, RAIL, other), 12),
      opened(straightTree({}, other, RAIL), 12),
    ];
    for (const x of XS) {
      expect(there.halves.near.heightMm(x)).toBeCloseTo(here.halves.off.heightMm(x), 9);
      expect(middle(there, x, "off")).toBeCloseTo(middle(here, x, "near"), 9);
    }
    expect(Math.abs(middle(there, 200, "near") - middle(there, 200, "off"))).toBeGreaterThan(0.1);
    const { turned } = travelled(straightTree());
    const [own, across] = [turned.near.halves.near.turnRad(0), turned.near.halves.off.turnRad(0)];
    expect(own).toBeGreaterThan(5 * Math.abs(across));
    expect(turned.off.halves.off.turnRad(0)).toBeCloseTo(own, 9);
    expect(turned.off.halves.near.turnRad(0)).toBeCloseTo(across, 9);
  });
  test("there and back again leaves only what is of second order in the change", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 8, noNaN: true }),
        fc.double({ min: 0, max: 45, noNaN: true }),
        (change, hingeOffMm) => {
          const today = straightTree();
          const left = (mm: number) => {
            const back = numbersOf(opened(opened(today, mm, { hingeOffMm }), -mm, { hingeOffMm }));
            return most(back.map((value, i) => value - (numbersOf(today)[i] ?? 0)));
          };
          const [whole, half] = [left(change), left(change / 2)];
          // Of second order: half the change leaves a quarter. Of first order it would leave a half.
          expect(whole / half).toBeGreaterThan(3);
          expect(whole).toBeLessThan(0.03 * change * change);
        },
      ),
      { seed, numRuns: 20 },
    );
  });
  test("its panel has the cells of a moved tree and not of one 5 % off", () => {
    const mesh = { nx: 12, nv: 8 };
    const cells = (change: number) => panelCells(opened(straightTree(), change), mesh);
    const [one, other] = [cells(10), cells(10.5)];
    expect(most(Array.from(other.y, (value, i) => value - (one.y[i] ?? 0)))).toBeGreaterThan(0.1);
  });
});

describe("locked in", () => {
  test("limp rails and cantle hold nothing: the tree turns about its hinge as a head by itself does", () => {
    const limp = {
      rail: { thinMm: 0.05, wideMm: 0.5 },
      cantle: { thinMm: 0.05, wideMm: 0.5, riseMm: 50 },
      deckThinMm: 0,
    };
    const travel = travelled(straightTree(), limp);
    const [tree, alone] = [leverOfTree(travel), leverOfHead(straightTree().head, 25)];
    // The arch in six straight pieces cuts its round a little short.
    expect(tree.downMm / alone.downMm).toBeCloseTo(1, 2);
    expect(tree.outMm / alone.outMm).toBeCloseTo(1, 2);
    const keeps = keepsOf(travel, press(10));
    expect(Math.tan(halfTurnRad(10, tree)) / keeps.turnRad).toBeCloseTo(1, 4);
    const { headMPa, rivetN } = lockedIn(travel, keeps);
    const stiff = lockedIn(travelled(straightTree()), keepsOf(travelled(straightTree()), press(10)));
    expect(headMPa).toBeLessThan(1e-3 * stiff.headMPa);
    expect(rivetN ?? 1).toBeLessThan(1e-3 * (stiff.rivetN ?? 0));
  });
  test("a head hinges 0.68 to 1.0 of its crown's height over the tips for a hinge 45 to 0 mm off the crown", () => {
    const { head } = straightTree();
    const parts = [0, 25, 45].map((mm) => leverOfHead(head, mm).downMm / head.depthMm);
    expect(parts[0]).toBeGreaterThan(0.99);
    expect(parts[0]).toBeLessThan(1.08);
    expect(parts[2]).toBeGreaterThan(0.68);
    expect(parts).toEqual([...parts].sort((a, b) => b - a));
  });
  test("grows in proportion, either way, and with stiffer rails; halves keep more than their arms show", () => {
    const travel = travelled(straightTree());
    const at = (mm: number) => lockedIn(travel, keepsOf(travel, press(mm)));
    expect(at(10).railMPa / at(5).railMPa).toBeCloseTo(2, 9);
    expect(at(-10).headMPa).toBeCloseTo(at(10).headMPa, 9);
    const thick = travelled(straightTree(), { rail: { thinMm: 14, wideMm: 70 } });
    expect(lockedIn(thick, keepsOf(thick, press(10))).headMPa).toBeGreaterThan(at(10).headMPa);
    expect(keepsOf(travel, press(10)).turnRad).toBeGreaterThan(
      Math.tan(halfTurnRad(10, leverOfTree(travel))),
    );
  });
});

test("no draw of the unknown sections leaves a tree that can move, or a figure that is none", () => {
  for (const build of [
    LAMINATED,
    MOULDED,
    { ...LAMINATED, springs: "along-rails" as const },
    { arch: "unknown" as const },
  ]) {
    const belief = beliefOf(build);
    for (let i = 0; i < 60; i++) {
      const sections = belief.at(drawDeviations(belief.uncertain, 5, i));
      const beams = beamsOf(straightTree(), sections);
      expect("held" in beams).toBe(true);
      if (!("held" in beams)) continue;
      const figures = frameFigures(travelOf(beams, sections.hingeOffMm), press(10));
      const all = [
        ...STATIONS.flatMap((station) => Object.values(figures.stations[station])),
        figures.rearPart,
      ];
      for (const value of all) expect(Number.isFinite(value)).toBe(true);
      expect(figures.stations.front.spreadMm).toBeGreaterThan(5);
      expect(figures.rearPart).toBeLessThan(0.95);
      expect(figures.locked.plateMPa === undefined).toBe(false);
      expect(figures.locked.springMPa === undefined).toBe(build.springs !== "along-rails");
    }
  }
});
