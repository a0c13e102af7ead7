import { describe, expect, test } from "vitest";
import type { Pull } from "../../core/src/engine/contact/problem.ts";
import { oneStrap } from "../../core/src/fit/girth.ts";
import { loadsFor, pressedFor, TREE, type Typed } from "./model-loads.ts";

/** Straps, their places and their pulls. How a girth shares its pull, nobody has measured: it is drawn. */
const PULL = 100;
const pullsOf = (typed: Typed, tree = TREE) => loadsFor(typed).girth.pulls(tree, PULL, {});
const down = (pulls: readonly Pull[]) => pulls.reduce((sum, { force }) => sum - force.z, 0);
const pair = (near: number, off = near) => ({ used: "yes", near, off });

describe("girth straps", () => {
  test("none said to be used: the bearing's own two readings, one strap a side", () => {
    expect(pullsOf({})).toEqual(oneStrap(false).pulls(TREE, PULL, {}));
    expect(pullsOf({}).map(({ at }) => at.x)).toEqual([TREE.straps.near.xMm, TREE.straps.off.xMm]);
  });
  test("one of a used pair not read: the bearing's readings stand", () => {
    const half = { first: { used: "yes", near: 60 } };
    expect(pullsOf({ girthing: half })).toEqual(oneStrap(false).pulls(TREE, PULL, {}));
  });
  test("however many straps, they pull as much as the girth does", () => {
    for (const girthing of [
      { first: pair(60) },
      { first: pair(60), third: pair(170) },
      { first: pair(60), second: pair(110), back: pair(260) },
    ]) {
      expect(down(pullsOf({ girthing }))).toBeCloseTo(2 * PULL, 9);
      expect(down(pullsOf({ girthing: { ...girthing, layout: "V" } }))).toBeCloseTo(2 * PULL, 9);
    }
  });
  test("straps of a V lean to one buckle and together pull neither way; parallel ones hang straight", () => {
    const girthing = { point: pair(0), third: pair(170) };
    const along = (layout: string) =>
      pullsOf({ girthing: { ...girthing, layout } }).map(({ force }) => force.x);
    expect(along("parallel")).toEqual([0, 0, 0, 0]);
    const [front = 0, rear = 0] = along("V");
    expect(front).toBeGreaterThan(10);
    expect(front + rear).toBeCloseTo(0, 9);
  });
  test("a strap on the point moves out with the point when the head opens, and the others do not", () => {
    const open = { ...TREE, head: { ...TREE.head, spreadMm: TREE.head.spreadMm + 10 } };
    const out = (typed: Typed, tree: typeof TREE) => pullsOf(typed, tree).map(({ at }) => Math.abs(at.y));
    const onPoint = { girthing: { point: pair(0) } };
    expect((out(onPoint, open)[0] ?? 0) - (out(onPoint, TREE)[0] ?? 0)).toBeCloseTo(5, 9);
    expect(out({ strapOnPoint: "yes" }, open)[1]).toBeCloseTo(
      (out({ strapOnPoint: "yes" }, TREE)[1] ?? 0) + 5,
      9,
    );
    expect(out({ girthing: { first: pair(60) } }, open)).toEqual(
      out({ girthing: { first: pair(60) } }, TREE),
    );
  });
  test("of two straps the front one has its part, whichever was typed first; of three each a third", () => {
    const shares = (girthing: object, deviations = {}) =>
      loadsFor({ girthing })
        .girth.pulls(TREE, PULL, deviations)
        .slice(0, Object.keys(girthing).length)
        .map(({ at, force }) => [at.x, -force.z / PULL]);
    const front = { "girth.front.part": 0.1 };
    expect(shares({ first: pair(60), third: pair(170) }, front)).toEqual([
      [60, 0.6],
      [170, 0.4],
    ]);
    // The third strap sewn ahead of the first: the part goes by place, not by name.
    const crossed = shares({ first: pair(170), third: pair(60) }, front);
    expect(crossed.map(([x]) => x)).toEqual([170, 60]);
    expect(crossed.map(([, part]) => part)).toEqual([0.4, 0.6]);
    const three = shares({ first: pair(60), second: pair(110), back: pair(260) }, front);
    for (const [, part] of three) expect(part).toBeCloseTo(1 / 3, 12);
  });
  test("a V's buckle hangs where the pulls balance, 250 mm below the tips", () => {
    const girthing = { first: pair(60), third: pair(170), layout: "V" };
    const [front, rear] = pullsOf({ girthing });
    // Evenly shared they meet at 115 mm: each leans by 55 in 250.
    expect((front?.force.x ?? 0) / -(front?.force.z ?? 0)).toBeCloseTo(55 / 250, 12);
    expect((rear?.force.x ?? 0) / -(rear?.force.z ?? 0)).toBeCloseTo(-55 / 250, 12);
  });
  test("what is drawn is what is assumed: the front's part of two, the buckle of a V, else nothing", () => {
    const drawn = (girthing: object) =>
      loadsFor({ girthing })
        .girth.uncertain.map(({ id }) => id)
        .filter((id) => id.startsWith("girth."));
    expect(drawn({})).toEqual([]);
    expect(drawn({ first: pair(60) })).toEqual([]);
    expect(drawn({ first: pair(60), layout: "V" })).toEqual([]);
    expect(drawn({ first: pair(60), third: pair(170) })).toEqual(["girth.front.part"]);
    expect(drawn({ first: pair(60), third: pair(170), layout: "V" })).toEqual([
      "girth.front.part",
      "girth.buckle.mm",
    ]);
    expect(drawn({ first: pair(60), second: pair(110), third: pair(170), layout: "V" })).toEqual([
      "girth.buckle.mm",
    ]);
  });
  test("a strap on the point hangs outside the tip by the head's thickness", () => {
    const [near, off] = pullsOf({ girthing: { point: pair(0) } });
    const out = TREE.head.spreadMm / 2 + TREE.head.thicknessMm;
    expect([near?.at.y, off?.at.y]).toEqual([-out, out]);
  });
  test("further ahead it draws the head down, further back it lifts it", () => {
    const headUp = (x: number) => pressedFor({ girthing: { first: pair(x) } }).headUpRad;
    const ups = [0, 90, 180, 260].map(headUp);
    expect(ups).toEqual([...ups].sort((a, b) => a - b));
    expect((ups[3] ?? 0) - (ups[0] ?? 0)).toBeGreaterThan(0.01);
    // The reference case's own strap, typed as a layout, is the reference case.
    expect(headUp(TREE.straps.near.xMm)).toBe(pressedFor({}).headUpRad);
  });
});
