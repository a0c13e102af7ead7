import { describe, expect, test } from "vitest";
import { type DrawTable, doubtOf, joined } from "../../core/src/answer/draw-table.ts";
import { formsOf } from "../../core/src/answer/forms.ts";
import { roadOf } from "../../core/src/answer/road.ts";
import { changedIn, drawAt, drawnOn, settledAt } from "../../core/src/answer/settle.ts";
import { sectionsOf } from "../../core/src/fit/sections.ts";
import type { Deviations, Uncertain } from "../../core/src/shape/model.ts";
import { propertySeed } from "../number/seed.ts";
import { combined } from "../shape/propagation.ts";
import { SEED, surveyOf } from "./examples.ts";

const survey = surveyOf("09-alter-in-the-saddle");
const road = roadOf(survey, 0, SEED);
const setting = road.settings.find(({ changeMm }) => changeMm === 6);
const settled = settledAt(road, setting);
if (settled === undefined) throw new Error("nothing was settled");
const draw = (from: number, to: number, seed = SEED): DrawTable => drawAt(settled, seed, from, to);

/** Enough to tell a spread within 10 %: that of 1000 draws strays by about 3 %. */
const DRAWN = 1000;
const whole = draw(0, DRAWN);

describe("draws shared out", () => {
  const rng = propertySeed("shared draws");
  /** 0..n-1 in an order that the seed decides (a linear congruence, Numerical Recipes' constants). */
  function shuffled(n: number): number[] {
    let state = rng >>> 0;
    const order = Array.from({ length: n }, (_, i) => i);
    for (let i = n - 1; i > 0; i--) {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      const j = state % (i + 1);
      [order[i], order[j]] = [order[j] ?? i, order[i] ?? j];
    }
    return order;
  }
  const few = draw(0, 240);
  test.each([2, 3, 16, 240])(
    "in %i ranges, worked out in any order, are the same draws digit for digit",
    (parts) => {
      const edges = Array.from({ length: parts + 1 }, (_, i) => Math.round((240 * i) / parts));
      const ranges = shuffled(parts).map((i) => draw(edges[i] ?? 0, edges[i + 1] ?? 0));
      expect(JSON.stringify(joined(ranges))).toBe(JSON.stringify(joined([few])));
    },
  );
  test("joined bit by bit they are the same too, and the first of a thousand are the first of fewer", () => {
    const grown = joined([joined([joined([]), draw(0, 100)]), draw(100, 240)]);
    expect(JSON.stringify(grown)).toBe(JSON.stringify(joined([few])));
    for (const [key, values] of Object.entries(few.values))
      expect(whole.values[key]?.slice(0, 240)).toEqual(values);
  });
  test("drawn on from where they stopped they are the same", () => {
    const begun = { settled, table: draw(0, 0) };
    const on = drawnOn(drawnOn(begun, SEED, 100), SEED, 140);
    expect(JSON.stringify(on.table)).toBe(JSON.stringify(joined([few])));
  });
  test("the chosen setting and two each side are drawn, and no other is shown as drawn", () => {
    expect(settled.changed.map((one) => one.setting.changeMm).sort((a, b) => a - b)).toEqual([4, 5, 6, 7, 8]);
    const at = (mm: number) => road.settings.find(({ changeMm }) => changeMm === mm);
    expect(changedIn(settled, at(5))?.setting.changeMm).toBe(5);
    expect(changedIn(settled, at(9))).toBeUndefined();
    expect(changedIn(settled, undefined)).toBeUndefined();
    const drawn = (name: string) => whole.values[`moved ${name} clearanceMm`]?.length;
    expect([drawn("press +4 mm"), drawn("press +8 mm"), drawn("press +9 mm")]).toEqual([
      DRAWN,
      DRAWN,
      undefined,
    ]);
  });
  test("another seed draws otherwise", () => {
    const key = "today face-front front, near, cold";
    expect(draw(0, 20, SEED + 1).values[key]).not.toEqual(few.values[key]?.slice(0, 20));
  });
});

/*
 * A second way to the doubt of the section figures: slopes by finite differences over every uncertain input, times its
 * standard deviation, summed in squares (JCGM 100:2008, 5.1.2), times 1.96.
 */
describe("half of the central 95 % of the draws against first-order propagation, within 10 %", () => {
  const { back, tree, uncertain } = formsOf(survey, 0);
  if (back === undefined || tree === undefined) throw new Error("no forms");
  const misfits = (deviations: Deviations) => sectionsOf(back, tree.at(deviations), deviations);
  const sdOf = (one: Uncertain) =>
    // A range is drawn evenly on each side of its base, half the draws each.
    one.kind === "normal" ? one.sd : Math.sqrt(((one.hi - one.mean) ** 2 + (one.mean - one.lo) ** 2) / 6);
  const moved = uncertain.map((one) => {
    const step = sdOf(one);
    const [up, down] = [misfits({ [one.id]: step }), misfits({ [one.id]: -step })];
    return { id: one.id, parts: up.map((fit, i) => (fit.misfitRad - (down[i]?.misfitRad ?? 0)) / 2) };
  });
  const figures = misfits({}).map(({ station, side }, i) => ({ station, side, i }));
  test.each(figures)("$station, $side", ({ station, side, i }) => {
    const firstOrderDeg = (1.959964 * combined(moved.map(({ parts }) => parts[i] ?? 0)) * 180) / Math.PI;
    const rule = station === "front" ? "face-front" : "face-rail";
    const ratio = (doubtOf(whole, `today ${rule} ${station}, ${side}, cold`) ?? Number.NaN) / firstOrderDeg;
    const most = [...moved].sort((a, b) => Math.abs(b.parts[i] ?? 0) - Math.abs(a.parts[i] ?? 0));
    console.log(
      `${station}, ${side}: first order ${firstOrderDeg.toFixed(2)} degrees, draws ${ratio.toFixed(3)} times that; ` +
        `most from ${most
          .slice(0, 3)
          .map(({ id }) => id)
          .join(", ")}`,
    );
    expect(ratio).toBeGreaterThan(0.9);
    expect(ratio).toBeLessThan(1.1);
  });
});

describe("draws in which the saddle does not come to rest", () => {
  const resting = (when: string) => whole.values[`${when} rests`] ?? [];
  test("are counted, and their other figures stand", () => {
    const tipped = resting("today").filter((one) => one === 0).length;
    console.log(
      `of ${DRAWN} draws ${tipped} do not rest as found, ${resting("press +6 mm").filter((one) => one === 0).length} after 6 mm`,
    );
    expect(tipped).toBeGreaterThan(0);
    expect(tipped).toBeLessThan(DRAWN / 4);
    for (const [key, values] of Object.entries(whole.values)) {
      const gaps = values.filter(Number.isNaN).length;
      const hangsOnRest = /^(moved .* (clearance|beside|seat|frontRise|rearRise)|ridden )/.test(key);
      if (!hangsOnRest) expect([key, gaps]).toEqual([key, 0]);
      else expect(gaps).toBeGreaterThanOrEqual(tipped);
    }
  });
});
