import { describe, expect, test } from "vitest";
import { spreadOf } from "../../core/src/engine/quantile.ts";
import { sectionsOf } from "../../core/src/fit/sections.ts";
import { buildBack, isLacking } from "../../core/src/shape/back.ts";
import { drawDeviations } from "../../core/src/shape/draw.ts";
import type { Deviations, Uncertain } from "../../core/src/shape/model.ts";
import { buildTree } from "../../core/src/shape/tree.ts";
import { wantedHead } from "../../core/src/shape/wanted-head.ts";
import { crossHeight, modelHorse } from "./model-back.ts";
import { modelSaddle } from "./model-saddle.ts";
import { combined, contributions } from "./propagation.ts";

/*
 * Two ways to one uncertainty: half of the central 95 % of the draws, and 1.96 times the first-order sum of squares.
 * They part where the figure is not linear in its readings; that the doubt put in is right, neither can see.
 */
const DRAWS = 4000;
const back = buildBack(modelHorse({ height: (x, y) => crossHeight(x, y > 0 ? y : 1.15 * y) }), "cold");
const tree = buildTree(modelSaddle());
if (isLacking(back) || isLacking(tree)) throw new Error("lacking");
const uncertain: readonly Uncertain[] = [...back.uncertain, ...tree.uncertain];
const normal = uncertain.filter((one) => one.kind === "normal");

/** Misfits of the six faces, rad, and the spread that the off side alone would want, mm. */
function figures(deviations: Deviations): readonly number[] {
  if (isLacking(back) || isLacking(tree)) return [];
  const head = wantedHead(back.sections.front, { depthMm: 95, clearanceMm: 40, panelMm: 20 }, deviations);
  const wanted = isLacking(head) ? Number.NaN : 2 * head.sides.off.halfSpreadMm;
  return [...sectionsOf(back, tree.at(deviations), deviations).map(({ misfitRad }) => misfitRad), wanted];
}

const NAMES = ["front near", "front off", "mid near", "mid off", "rear near", "rear off", "wanted head"];
const drawn = Array.from({ length: DRAWS }, (_, index) => figures(drawDeviations(uncertain, 5, index)));
const inputs = normal.map((one) => ({
  value: 0,
  u: one.kind === "normal" ? one.sd : 0,
  freedom: Number.POSITIVE_INFINITY,
}));

describe("draws against first-order propagation, within 5 %", () => {
  test.each(NAMES)("%s", (name) => {
    const which = NAMES.indexOf(name);
    const model = (values: readonly number[]) =>
      figures(Object.fromEntries(normal.map(({ id }, i) => [id, values[i] ?? 0])))[which] ?? Number.NaN;
    const firstOrder = 1.959964 * combined(contributions(model, inputs));
    const ratio = spreadOf(drawn.map((row) => row[which] ?? Number.NaN)) / firstOrder;
    expect(ratio).toBeGreaterThan(0.95);
    expect(ratio).toBeLessThan(1.05);
  });
});

describe("a range is drawn with half of the draws on each side of its base, evenly on each", () => {
  const range = { id: "a.range.1", kind: "range", mean: 2, lo: 1, hi: 6 } as const;
  const all = Array.from(
    { length: 8000 },
    (_, index) => 2 + (drawDeviations([range], 11, index)[range.id] ?? Number.NaN),
  ).sort((a, b) => a - b);
  // A quantile of 8000 even draws strays by about 1 % of its half's width.
  test.each([
    [0, 1],
    [0.25, 1.5],
    [0.5, 2],
    [0.75, 4],
    [1, 6],
  ])("part %f lies at %f", (part, place) => {
    const half = part > 0.5 ? 4 : 1;
    expect(Math.abs((all[Math.round(part * 7999)] ?? Number.NaN) - place)).toBeLessThan(0.03 * half);
  });
});
