import { describe, expect, it } from "vitest";
import { movedHead } from "../../core/src/reach/frame/head-move.ts";
import { afterMove, frameInDraw } from "../../core/src/reach/frame/in-draw.ts";
import { downLine, evenly } from "../../core/src/reach/frame/places.ts";
import { treeAt } from "../../core/src/reach/frame/tree-at.ts";
import type { Head } from "../../core/src/shape/model.ts";
import { straightTree } from "../reach/straight-tree.ts";
import { beliefOf, press, travelled } from "./moved.ts";

/* A head after a move, by its own lever and with its tree behind it. Worked out by hand. */

const HEAD: Head = {
  ...straightTree().head,
  spreadMm: 180,
  spreadUpperMm: 150,
  depthMm: 95,
  halfAngleRad: { near: 0.8, off: 0.7 },
};
const LEVER = { downMm: 60, outMm: 80 };

describe("a head moved by a lever", () => {
  it("opened: its halves turn so that half the change is made 60 mm below their hinge, and its tips come up", () => {
    const moved = movedHead(HEAD, { changeMm: 10, halfTurnRad: undefined }, LEVER);
    const turn = Math.atan(5 / 60);
    expect(moved.frontTurnRad).toBeCloseTo(turn, 12);
    expect(moved.apartMm).toBeCloseTo(0, 12);
    expect(moved.tipDropMm).toBeCloseTo(60 * (Math.cos(turn) - 1) - 80 * Math.sin(turn), 12);
    expect(moved.head).toMatchObject({ spreadMm: 190, spreadUpperMm: undefined });
    expect(moved.head.depthMm).toBeCloseTo(95 + moved.tipDropMm, 12);
    expect(moved.head.halfAngleRad.near).toBeCloseTo(0.8 + turn, 12);
    expect(moved.head.halfAngleRad.off).toBeCloseTo(0.7 + turn, 12);
  });
  it("a plate's own turn: what it does not spread stands out of the hinge", () => {
    const moved = movedHead(HEAD, { changeMm: 10, halfTurnRad: 0.05 }, LEVER);
    expect(moved.frontTurnRad).toBe(0.05);
    expect(moved.apartMm).toBeCloseTo(5 - 60 * Math.tan(0.05), 12);
  });
  it("only a head that neither opens nor turns keeps its upper level", () => {
    const upper = (changeMm: number, halfTurnRad: number | undefined) =>
      movedHead(HEAD, { changeMm, halfTurnRad }, LEVER).head.spreadUpperMm;
    expect(upper(0, undefined)).toBe(150);
    expect(upper(0, 0)).toBe(150);
    expect(upper(0, 0.05)).toBeUndefined();
    expect(upper(4, 0)).toBeUndefined();
    expect(upper(4, undefined)).toBeUndefined();
  });
});

describe("a head and the tree behind it", () => {
  const tree = straightTree();
  const frame = frameInDraw(beliefOf(), tree, {});
  it("as found, nothing moves and nothing is solved", () => {
    const found = { head: tree.head, tree, frame };
    for (const halfTurnRad of [undefined, 0]) {
      const after = afterMove(found, { changeMm: 0, halfTurnRad }, undefined);
      expect(after.head).toBe(tree.head);
      expect(after.tree).toBe(tree);
      expect(after.travel).toBeUndefined();
    }
  });
  it("opened or turned, it is the whole tree of its frame", () => {
    for (const move of [press(6), { changeMm: 0, halfTurnRad: 0.03 }, { changeMm: 4, halfTurnRad: 0.02 }]) {
      const after = afterMove({ head: tree.head, tree, frame }, move, undefined);
      const whole = treeAt(travelled(tree), move);
      expect(after.travel).toBeDefined();
      expect(after.tree?.tipHeightMm).toBeCloseTo(whole.tipHeightMm, 9);
      expect(after.head.spreadMm).toBeCloseTo(whole.head.spreadMm, 9);
      expect(after.head.halfAngleRad.near).toBeCloseTo(whole.head.halfAngleRad.near, 9);
    }
  });
  it("a hinge is solved once, and each has its own answer", () => {
    expect(frame.travel(10)).toBe(frame.travel(10));
    expect(frame.travel(10)).not.toBe(frame.travel(30));
    expect(frame.travel(10)?.hingeOffMm).toBe(10);
  });
  it("without a tree the head moves by its own lever, and no tree comes back", () => {
    const alone = frameInDraw(beliefOf(), undefined, {});
    const after = afterMove({ head: HEAD, tree: undefined, frame: alone }, press(6), 20);
    expect(after.tree).toBeUndefined();
    expect(after.travel).toBeUndefined();
    expect(after.head).toEqual(movedHead(HEAD, press(6), alone.lever(HEAD, 20)).head);
    expect(after.head.spreadMm).toBe(186);
  });
});

describe("places along a line", () => {
  const line = [
    [0, 0],
    [30, 40],
    [30, 100],
  ] as const;
  it("so far down it, at its corners and past its end", () => {
    expect(downLine(line, 0)).toEqual([0, 0]);
    expect(downLine(line, 25)).toEqual([15, 20]);
    expect(downLine(line, 50)).toEqual([30, 40]);
    expect(downLine(line, 80)).toEqual([30, 70]);
    expect(downLine(line, 500)).toEqual([30, 100]);
  });
  it("evenly, its ends among them", () => {
    expect(evenly(line, 2)).toEqual([
      [0, 0],
      [30, 45],
      [30, 100],
    ]);
    expect(evenly([line[0], line[0], line[1]], 1)).toEqual([
      [0, 0],
      [30, 40],
    ]);
  });
});
