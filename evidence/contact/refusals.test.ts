import type { ContactProblem, RefusalReason } from "@treewright/core/engine/contact/problem.ts";
import { settle } from "@treewright/core/engine/contact/settle.ts";
import { describe, expect, test } from "vitest";
import { stiffer } from "./changes.ts";
import { inputsOf, problemOf } from "./model-case.ts";

const soft = problemOf(inputsOf("ct-flat-centre"));
const flat = stiffer(soft, 10);

function loadedAt(x: number, y: number): ContactProblem {
  return { ...flat, load: { ...flat.load, at: { x, y, z: 0 } } };
}

function reasonOf(problem: ContactProblem): RefusalReason | "rests" {
  const rest = settle(problem);
  return rest.ok ? "rests" : rest.why;
}

describe("a load beyond the support tips the body that way", () => {
  // The panels reach from x = 0 to 420 and from y = -140 to 140.
  test.each([
    [-15, 0, "tips-front"],
    [435, 0, "tips-rear"],
    [210, -155, "tips-near"],
    [210, 155, "tips-off"],
    [15, 0, "rests"],
    [405, 0, "rests"],
    [210, -120, "rests"],
    [210, 120, "rests"],
  ])("load line at x %d, y %d: %s", (x, y, expected) => {
    expect(reasonOf(loadedAt(x, y))).toBe(expected);
  });

  test("on a bed ten times as soft a load over the very end tips it too, as a scan of all pitches shows", () => {
    expect(reasonOf({ ...loadedAt(15, 0), law: soft.law })).toBe("tips-front");
    expect(reasonOf({ ...loadedAt(25, 0), law: soft.law })).toBe("rests");
  });

  test("the same from a start that already leans the other way", () => {
    const rest = settle(loadedAt(435, 0), { start: { heave: -5, pitch: -0.1, roll: 0 } });
    expect(rest).toEqual({ ok: false, why: "tips-rear" });
  });
});

describe("a load point too high", () => {
  const heavy = problemOf(inputsOf("ct-flat-topheavy-unstable"));
  test("in the middle: balances, and falls at a touch", () => {
    expect(reasonOf(heavy)).toBe("unstable");
  });
  test.each([
    [200, "tips-front"],
    [220, "tips-rear"],
  ])("at x %d: %s", (x, expected) => {
    const { load } = heavy;
    expect(reasonOf({ ...heavy, load: { ...load, at: { ...load.at, x } } })).toBe(expected);
  });
});

describe("a horse's saddle under a growing load (separate implementation: a rest exists to about 2,140 N)", () => {
  const base = problemOf(inputsOf("ct-horse-S+0"));
  const under = (weightN: number): ContactProblem => ({ ...base, load: { ...base.load, weightN } });
  test("rests at 2,120 N and tips head down at 2,160 N", () => {
    const wide = { compressionLimit: 10 };
    expect(reasonOf({ ...under(2120), ...wide })).toBe("rests");
    expect(reasonOf({ ...under(2160), ...wide })).toBe("tips-front");
  });
});

describe("what goes over from a rest near by goes over without one, and what rests from it rests", () => {
  const near = settle(loadedAt(25, 0));
  const base = problemOf(inputsOf("ct-horse-S+0"));
  const besideTheLast = settle({ ...base, load: { ...base.load, weightN: 2100 }, compressionLimit: 10 });
  test.each(Array.from({ length: 21 }, (_, i) => 20 - 2 * i))("load line at x %d", (x) => {
    if (!near.ok) throw new Error(near.why);
    const warm = settle(loadedAt(x, 0), { start: near.pose });
    expect(warm.ok ? "rests" : warm.why).toBe(reasonOf(loadedAt(x, 0)));
  });
  test.each(Array.from({ length: 11 }, (_, i) => 2100 + 10 * i))("a horse's saddle under %d N", (weightN) => {
    if (!besideTheLast.ok) throw new Error(besideTheLast.why);
    const problem = { ...base, load: { ...base.load, weightN }, compressionLimit: 10 };
    const warm = settle(problem, { start: besideTheLast.pose });
    expect(warm.ok ? "rests" : warm.why).toBe(reasonOf(problem));
  });
});

describe("layers pressed beyond their law", () => {
  const series = problemOf(inputsOf("ct-flat-stiffening"));
  test("is said apart from tipping, at the limit given", () => {
    const rest = settle(series);
    if (!rest.ok) throw new Error("rests");
    expect(reasonOf({ ...series, compressionLimit: 1.01 * rest.compressionMax })).toBe("rests");
    expect(reasonOf({ ...series, compressionLimit: 0.99 * rest.compressionMax })).toBe("beyond-law");
  });
});

describe("what is no number is refused by name", () => {
  const { cells, load, law } = flat;
  const spoiled = Float64Array.from(cells.z, (z, i) => (i === 3 ? Number.NaN : z));
  test.each<[string, ContactProblem]>([
    ["cells.n", { ...flat, cells: { ...cells, n: 0 } }],
    ["cells.z[3]", { ...flat, cells: { ...cells, z: spoiled } }],
    ["cells.area", { ...flat, cells: { ...cells, area: new Float64Array(5) } }],
    ["law.stiffness[0]", { ...flat, law: { ...law, kind: "linear", stiffness: new Float64Array(cells.n) } }],
    ["load.weightN", { ...flat, load: { ...load, weightN: Number.NaN } }],
    ["load.at.x", { ...flat, load: { ...load, at: { x: Number.POSITIVE_INFINITY, y: 0, z: 0 } } }],
    [
      "load.pulls[0].force.y",
      {
        ...flat,
        load: { ...load, pulls: [{ at: { x: 0, y: 0, z: 0 }, force: { x: 0, y: Number.NaN, z: 0 } }] },
      },
    ],
    ["friction", { ...flat, friction: -0.1 }],
    ["pivot.z", { ...flat, pivot: { x: 0, y: 0, z: Number.NaN } }],
    ["slide.y", { ...flat, slide: { x: 0, y: Number.NaN } }],
    ["across", { ...flat, across: { x: 1, y: 1 } }],
    ["compressionLimit", { ...flat, compressionLimit: 0 }],
    ["surface", { ...flat, surface: (n, _x, _y, out) => void out.z.fill(Number.NaN, 0, n) }],
  ])("%s", (name, problem) => {
    expect(() => settle(problem)).toThrow(RangeError);
    expect(() => settle(problem)).toThrow(name);
  });
  test("start.pitch", () => {
    expect(() => settle(flat, { start: { heave: 0, pitch: Number.NaN, roll: 0 } })).toThrow("start.pitch");
  });
});
