import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { GRAVITY } from "../../core/src/fit/assumed.ts";
import { forceCurve, partUnder } from "../../core/src/fit/force-curve.ts";
import { BEATS, GAITS, PEAKS, peakRange, riddenGaits } from "../../core/src/fit/gaits.ts";
import { MESHES } from "../../core/src/fit/panel-cells.ts";
import { problemOf } from "../../core/src/fit/problem.ts";
import { ridesAhead } from "../../core/src/fit/ridden.ts";
import { drawDeviations } from "../../core/src/shape/draw.ts";
import { propertySeed } from "../number/seed.ts";
import { loadsFor, pressedFor, restFor, sittingFor, type Typed } from "./model-loads.ts";

const seed = propertySeed("gaits", 20310412);
const SITTING: Typed = { rides: { trot: "sitting", canter: "sitting" } };

/** The curve's form is assumed; what must hold of any form is told here. */
describe("force over a beat", () => {
  const PLACES = 4000;
  const at = (peak: number) => {
    const curve = forceCurve(peak);
    return Array.from({ length: PLACES }, (_, i) => curve((i + 0.5) / PLACES));
  };
  test("averages the weight, is highest at its peak and never pulls, whatever the peak (seed printed)", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 6, noNaN: true }), (peak) => {
        const all = at(peak);
        expect(all.reduce((sum, one) => sum + one, 0) / PLACES).toBeCloseTo(1, 3);
        expect(Math.min(...all)).toBeGreaterThanOrEqual(0);
        expect(Math.max(...all)).toBeLessThanOrEqual(peak + 1e-12);
        expect(forceCurve(peak)(0)).toBeCloseTo(peak, 9);
      }),
      { seed, numRuns: 200 },
    );
  });
  test("a peak 5 % higher with the same course would not average the weight", () => {
    const wrong = at(2.5).map((one) => 1.05 * one);
    expect(Math.abs(wrong.reduce((sum, one) => sum + one, 0) / PLACES - 1)).toBeGreaterThan(0.04);
  });
  test("the two forms meet at twice the weight", () => {
    const [below, above] = [forceCurve(2 - 1e-9), forceCurve(2 + 1e-9)];
    for (const phase of [0, 0.1, 0.25, 0.4, 0.5]) expect(below(phase)).toBeCloseTo(above(phase), 6);
  });
  test("the higher the peak, the longer the back is nearly free", () => {
    const free = [2, 2.5, 3, 3.5].map((peak) => partUnder(forceCurve(peak), 0.1));
    expect(free).toEqual([...free].sort((a, b) => a - b));
    expect(partUnder(forceCurve(1.2), 0.1)).toBe(0);
  });
  test("how long an even swing is under a level, in closed form", () => {
    // 1 + (peak - 1) cos is under L for the part arccos((L - 1) / (peak - 1)) / pi from the peak on.
    for (const [peak, level] of [
      [1.5, 0.7],
      [2, 0.1],
      [1.8, 1.3],
    ] as const) {
      const part = 1 - Math.acos((level - 1) / (peak - 1)) / Math.PI;
      expect(Math.abs(partUnder(forceCurve(peak), level) - part)).toBeLessThan(1 / 100);
    }
  });
  test("a peak under the weight is refused", () => expect(() => forceCurve(0.99)).toThrow("0.99"));
});

describe("published peaks", () => {
  test("walk, trot and canter in newtons a kilogram, over standard gravity; beats of a stride", () => {
    // Fruehwirth et al. 2004 (from memory): 12.1 (1.2), 24.3 (4.6), 27.2 (4.4) N/kg.
    expect([PEAKS.walk.times, PEAKS.walk.sd].map((one) => one * 9.80665)).toEqual([
      expect.closeTo(12.1, 9),
      expect.closeTo(1.2, 9),
    ]);
    expect([PEAKS.trot.sd, PEAKS.canter.sd].map((one) => one * 9.80665)).toEqual([
      expect.closeTo(4.6, 9),
      expect.closeTo(4.4, 9),
    ]);
    expect(BEATS).toEqual({ walk: 6, trot: 2, canter: 1 });
  });
  test("as it is ridden: seat, words, and what is on the bars", () => {
    const ridden = (
      trot: "sitting" | "rising" | "two-point" | "not-asked",
      canter: "sitting" | "half-seat" | "not-asked",
    ) =>
      riddenGaits({ trot, canter, mounts: "not-asked" }).map(({ says, peak, onBars }) => [
        says,
        peak.id,
        onBars,
      ]);
    expect(ridden("sitting", "half-seat")).toEqual([
      ["walk", "walk", undefined],
      ["sitting trot", "trot-sitting", undefined],
      ["canter in half-seat", "canter", "halfSeatPart"],
    ]);
    expect(ridden("two-point", "sitting").slice(1)).toEqual([
      ["trot in half-seat", "trot-two-point", "halfSeatPart"],
      ["canter, sat", "canter", undefined],
    ]);
    expect(ridden("not-asked", "not-asked").slice(1)).toEqual([
      ["trot, seat not asked", "trot", "risingPart"],
      ["canter, taken as sat", "canter", undefined],
    ]);
  });
  test.each(Object.entries(PEAKS))(
    "%s: drawn within a range that never falls under the weight",
    (_id, peak) => {
      const [lo, hi] = peakRange(peak);
      expect(lo).toBeGreaterThanOrEqual(1);
      expect(lo).toBeLessThan(peak.times);
      // A range of the published spread: its own standard deviation is that of an even law, width by root twelve.
      if (lo > 1) expect((hi - lo) / Math.sqrt(12)).toBeCloseTo(peak.sd, 9);
      expect(peak.source).not.toBe("");
    },
  );
  test("how the horse is ridden chooses peak and place of the load", () => {
    const trot = (how: "rising" | "sitting" | "two-point" | "not-asked") =>
      riddenGaits({ trot: how, canter: "not-asked", mounts: "not-asked" })[1];
    expect(trot("sitting")?.peak).toBe(PEAKS.sitting);
    expect(trot("rising")?.onBars).toBe("risingPart");
    expect(trot("two-point")?.onBars).toBe("halfSeatPart");
    expect(trot("not-asked")?.peak).toBe(PEAKS.trot);
  });
  test("in the draws each peak spreads over its range", () => {
    const { uncertain } = loadsFor(SITTING);
    const drawn = Array.from(
      { length: 2000 },
      (_, i) => drawDeviations(uncertain, 3, i)["gait.trot.peak.1"] ?? 0,
    );
    const [lo, hi] = peakRange(PEAKS.sitting);
    expect(Math.min(...drawn)).toBeCloseTo(lo - PEAKS.sitting.times, 1);
    expect(Math.max(...drawn)).toBeCloseTo(hi - PEAKS.sitting.times, 1);
  });
});

describe("at the peak", () => {
  const once = Object.fromEntries(
    GAITS.map((gait, i) => [`gait.${gait}.peak.1`, 1 - (loadsFor(SITTING).gaits[i]?.peak.times ?? 0)]),
  );
  test("once the weight is the saddle at rest", () => {
    const found = restFor(SITTING, once);
    const { poses } = found.ridden();
    for (const pose of poses?.gaits ?? []) {
      expect(pose?.heave).toBeCloseTo(found.pose?.heave ?? Number.NaN, 5);
      expect(pose?.pitch).toBeCloseTo(found.pose?.pitch ?? Number.NaN, 7);
    }
    expect(poses?.gaits).toHaveLength(3);
  });
  test("every third's share and mean come of as much more force as the peak says", () => {
    const found = restFor(SITTING);
    const sitting = sittingFor(SITTING);
    const weightN = sitting.mass.at({}) * GRAVITY;
    const { cells } = problemOf(sitting, MESHES.sweep);
    const area = cells.area.reduce((sum, one) => sum + one, 0);
    const force = (thirds: readonly { readonly meanKPa: number }[]) =>
      (thirds.reduce((sum, one) => sum + one.meanKPa, 0) / 6) * (area / 1000);
    const rest = pressedFor(SITTING);
    for (const gait of found.ridden().gaits) {
      if (!gait.ok) throw new Error(gait.why);
      const more = force(gait.thirds) - force(rest.thirds);
      // Faces lie aslant, so pressures sum to more than they lift; the slope under them hardly changes.
      const slant = force(rest.thirds) / (weightN + 200);
      expect(more / slant / (weightN * (gait.times - 1))).toBeGreaterThan(0.97);
      expect(more / slant / (weightN * (gait.times - 1))).toBeLessThan(1.03);
      expect(gait.thirds.reduce((sum, one) => sum + one.share, 0)).toBeCloseTo(1, 12);
    }
  });
  test("load on the stirrup bars comes on the front third; further ahead still more", () => {
    const front = (typed: Typed) => {
      const trot = restFor(typed).ridden().gaits[1];
      if (trot?.ok !== true) throw new Error("does not lie");
      return trot.thirds.filter(({ third }) => third === "front").reduce((sum, one) => sum + one.share, 0);
    };
    const bars = (near: number) => ({ near, off: near });
    const sat = front(SITTING);
    const half = front({ rides: { trot: "two-point" }, bars: bars(70) });
    expect(half).toBeGreaterThan(sat + 0.05);
    expect(front({ rides: { trot: "two-point" }, bars: bars(40) })).toBeGreaterThan(half + 0.01);
  });
  test("half-seat and risen are told beside it, the head lower and more in front", () => {
    const typed = { rides: { trot: "rising" } };
    const states = restFor(typed).states();
    const rest = pressedFor(typed);
    if (states?.halfSeat.ok !== true || states.risen?.ok !== true) throw new Error("does not lie");
    const front = (thirds: readonly { readonly third: string; readonly share: number }[]) =>
      thirds.filter(({ third }) => third === "front").reduce((sum, one) => sum + one.share, 0);
    expect(front(states.halfSeat.thirds)).toBeGreaterThan(front(rest.thirds) + 0.05);
    expect(states.halfSeat.seat.crownOverBackMm).toBeLessThan(rest.crownOverBackMm - 2);
    expect(states.risen.times).toBe(PEAKS.risen.times);
    expect(restFor(SITTING).states()?.risen).toBeUndefined();
  });
  test("where a neighbour lay moves no answer", () => {
    const found = restFor(SITTING);
    const cold = found.ridden();
    const poses = cold.poses;
    if (poses === undefined) throw new Error("no poses");
    const moved = poses.gaits.map(
      (pose) => pose && { ...pose, heave: pose.heave + 3, pitch: pose.pitch + 0.01 },
    );
    const warm = found.ridden({ rest: poses.rest, gaits: moved });
    warm.poses?.gaits.forEach((pose, i) => {
      expect(pose?.heave).toBeCloseTo(poses.gaits[i]?.heave ?? Number.NaN, 5);
    });
  });
  test("a sweep looks ahead along each gait's own line", () => {
    const pose = (heave: number) => ({ heave, pitch: 0, roll: 0 });
    const passed = [
      { at: 1, poses: { rest: pose(-1), gaits: [pose(-2), undefined] } },
      { at: 2, poses: { rest: pose(-2), gaits: [pose(-4), pose(-9)] } },
    ];
    const ahead = ridesAhead(passed, 4);
    expect([ahead?.rest.heave, ahead?.gaits[0]?.heave, ahead?.gaits[1]?.heave]).toEqual([-4, -8, -9]);
    expect(ridesAhead([], 1)).toBeUndefined();
  });
});
