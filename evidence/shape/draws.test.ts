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

function bothWays(figure: (deviations: Deviations) => number): {
  readonly drawn: number;
  readonly firstOrder: number;
} {
  const drawn = spreadOf(
    Array.from({ length: DRAWS }, (_, index) => figure(drawDeviations(uncertain, 5, index))),
  );
  const model = (values: readonly number[]) =>
    figure(Object.fromEntries(normal.map(({ id }, i) => [id, values[i] ?? 0])));
  const inputs = normal.map((one) => ({
    value: 0,
    u: one.kind === "normal" ? one.sd : 0,
    freedom: Number.POSITIVE_INFINITY,
  }));
  return { drawn, firstOrder: 1.959964 * combined(contributions(model, inputs)) };
}

describe("draws against first-order propagation", () => {
  test.each([0, 1, 2, 3, 4, 5])("misfit number %i", (which) => {
    const { drawn, firstOrder } = bothWays(
      (deviations) => sectionsOf(back, tree.at(deviations), deviations)[which]?.misfitRad ?? Number.NaN,
    );
    expect(drawn / firstOrder).toBeGreaterThan(0.95);
    expect(drawn / firstOrder).toBeLessThan(1.05);
  });
  test("spread of the wanted head, where one side is plainly the larger", () => {
    const wish = { depthMm: 95, clearanceMm: 40, panelMm: 20 };
    const { drawn, firstOrder } = bothWays((deviations) => {
      const head = wantedHead(back.sections.front, wish, deviations);
      return isLacking(head) ? Number.NaN : head.sides.off.halfSpreadMm * 2;
    });
    expect(drawn / firstOrder).toBeGreaterThan(0.95);
    expect(drawn / firstOrder).toBeLessThan(1.05);
  });
});
