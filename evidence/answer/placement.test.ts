import { describe, expect, test } from "vitest";
import { formsOf } from "../../core/src/answer/forms.ts";
import { placementSweep } from "../../core/src/answer/placement.ts";
import { inDraw, wholeAt } from "../../core/src/answer/whole.ts";
import { MESHES } from "../../core/src/fit/panel-cells.ts";
import { AS_FOUND } from "../../core/src/reach/move.ts";
import { surveyOf } from "./examples.ts";

const forms = formsOf(surveyOf("08-nothing-to-do"), 0);

describe("the saddle put to and fro", () => {
  const found = placementSweep(forms, AS_FOUND, undefined);
  /** The hardest third at one place, by itself. */
  const at = (placeMm: number) => {
    const rest = wholeAt(inDraw(forms, { "placement.mm": placeMm }), AS_FOUND, {
      mesh: MESHES.sweep,
    })?.pressed();
    return rest?.ok ? Math.max(...rest.thirds.map((third) => third.meanKPa)) : Number.NaN;
  };

  test("names the worst of all places, ends among them", () => {
    const worst = Math.max(...[-20, -10, 0, 10, 20].map(at));
    expect([found?.fromMm, found?.toMm, found?.refused]).toEqual([-20, 20, []]);
    expect(found?.hardest?.meanKPa).toBeCloseTo(worst, 6);
    expect(Math.abs((found?.hardest?.meanKPa ?? 0) * 1.05 - worst)).toBeGreaterThan(0.1);
    expect(worst).toBeGreaterThan(at(0));
  });
  test("moves the seat by something, and by less than a saddle that tips", () => {
    expect(found?.seatSpanDeg).toBeGreaterThan(0.2);
    expect(found?.seatSpanDeg).toBeLessThan(8);
  });
  test("is not there where the whole fit is not", () => {
    expect(placementSweep(formsOf(surveyOf("07-half-empty"), 0), AS_FOUND, undefined)).toBeUndefined();
  });
});
