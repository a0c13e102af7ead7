import { expect, test } from "vitest";
import { MESHES } from "../../core/src/fit/panel-cells.ts";
import { sensorPeaks } from "../../core/src/fit/sensor.ts";
import { pressedFor, problemFor, restFor } from "./model-loads.ts";

const mesh = MESHES.fine;
const { cells } = problemFor({}, {}, mesh);

test("an even pressure is its own peak, in every third and side", () => {
  const peaks = sensorPeaks(cells, new Float64Array(cells.n).fill(3), mesh);
  expect(peaks).toHaveLength(6);
  for (const peak of peaks) expect(peak).toBeCloseTo(3, 12);
});

test("one cell's peak is spread over about 4 cm2, whatever is around it", () => {
  const pressure = new Float64Array(cells.n);
  const at = (mesh.nx / 2) * mesh.nv + 12;
  pressure[at] = 100;
  const peaks = sensorPeaks(cells, pressure, mesh);
  const square = (100 * (cells.area[at] ?? 0)) / Math.max(...peaks);
  expect(square).toBeGreaterThan(320);
  expect(square).toBeLessThan(480);
  // Only the middle third of the near side has it.
  expect([...peaks].filter((peak) => peak > 0)).toHaveLength(1);
  expect(peaks[2]).toBeGreaterThan(0);
});

test("between the mean and the highest cell, and hardly moved by the mesh as that cell's is", () => {
  const gait = (which: typeof mesh | typeof MESHES.sweep) => {
    const walk = restFor({}, {}, which).ridden().gaits[0];
    if (walk?.ok !== true) throw new Error("does not lie");
    return walk.thirds;
  };
  // A square over the border of two thirds counts for the one, its highest cell may for the other.
  const highest = Math.max(...gait(mesh).map(({ maxKPa }) => maxKPa));
  gait(mesh).forEach(({ meanKPa, sensorKPa }) => {
    expect(sensorKPa).toBeGreaterThan(meanKPa);
    expect(sensorKPa).toBeLessThanOrEqual(highest);
  });
  const coarse = gait(MESHES.sweep);
  gait(mesh).forEach(({ sensorKPa }, i) => {
    expect(Math.abs((coarse[i]?.sensorKPa ?? 0) / sensorKPa - 1)).toBeLessThan(0.03);
  });
  expect(pressedFor({}).thirds).toHaveLength(6);
});
