import { describe, expect, it } from "vitest";
import { frontBack, widthChange } from "../../core/src/shape/back-widths.ts";
import { TRACE_WIDTH_MM } from "../../core/src/shape/trace-doubt.ts";
import { surveyWith } from "../gates/case.ts";

/** A wedge of 45 degrees a side: at any depth its width is twice the depth. */
const WEDGE = Array.from({ length: 27 }, (_, at) => {
  const across = -130 + 10 * at;
  return [across, -Math.abs(across)];
});
const front = (points: unknown, temper = "cold") => {
  const horse = surveyWith({
    "horses[0].traces[0].points": points,
    "horses[0].traces[0].repeats": [],
    "horses[0].traces[0].temper": temper,
  }).horses[0];
  if (!horse) throw new Error("the horse is there");
  return frontBack(horse, "cold");
};

describe("widths of a back at its front station", () => {
  it("of a wedge: twice the depth, within 2 mm (the smoothing rounds its ridge)", () => {
    for (const { depthMm, widthMm } of front(WEDGE)?.widths ?? [])
      expect(widthMm / (2 * depthMm)).toBeCloseTo(1, 1);
    expect(front(WEDGE)?.widths.map(({ depthMm }) => depthMm)).toEqual([50, 100]);
  });
  it("a back twice as flat is twice as wide", () => {
    const flat = WEDGE.map(([across = 0, up = 0]) => [across, up / 2]);
    expect(front(flat)?.widths[0]?.widthMm ?? 0).toBeCloseTo(2 * (front(WEDGE)?.widths[0]?.widthMm ?? 0), -1);
    // It ends 65 mm down: of 100 mm nothing is told.
    expect(front(flat)?.widths.length).toBe(1);
  });
  it("the doubt is never less than that of the flexible curve", () => {
    for (const { uMm } of front(WEDGE)?.widths ?? [])
      expect(uMm).toBeGreaterThanOrEqual(1.96 * TRACE_WIDTH_MM - 1e-9);
  });
  it("of a warm trace nothing is told where a cold one is asked for", () => {
    expect(front(WEDGE, "warm")).toBeUndefined();
  });
});

describe("two widths", () => {
  const width = (widthMm: number) => ({ depthMm: 50, widthMm, uMm: 3 });
  it.each([
    [100, 104, "cannot-tell"],
    [100, 104.3, "wider"],
    [100, 95.7, "narrower"],
    [100, 95.8, "cannot-tell"],
  ])("%s then %s: %s (3 mm each are 4.24 mm together)", (before, now, is) =>
    expect(widthChange(width(before), width(now)).is).toBe(is),
  );
});
