import {
  biotNumber,
  conduct,
  type Face,
  type Heating,
  type Slab,
  steadyFaces,
} from "@treewright/core/engine/heat/index.ts";
import fc from "fast-check";
import { expect, test } from "vitest";
import { propertySeed } from "../number/seed.ts";
import { coolingPart, fluxSlabRiseK } from "./series.ts";

const SEED = propertySeed("heat", 61);
const INSULATED: Face = { kind: "flux", fluxWm2: 0 };
const NYLON: Slab = { thicknessMm: 8, conductivityWmK: 0.25, densityKgM3: 1130, heatJKgK: 1700 };
const si = { k: 0.25, rho: 1130, cp: 1700, thicknessM: 0.008 };

const slabs = fc.record({
  thicknessMm: fc.double({ min: 2, max: 20, noNaN: true }),
  conductivityWmK: fc.double({ min: 0.1, max: 0.5, noNaN: true }),
  densityKgM3: fc.double({ min: 900, max: 1500, noNaN: true }),
  heatJKgK: fc.double({ min: 1000, max: 2500, noNaN: true }),
});
const temperature = fc.double({ min: 0, max: 240, noNaN: true });
const quietFaces: fc.Arbitrary<Face> = fc.oneof(
  fc.constant(INSULATED),
  temperature.map((temperatureC): Face => ({ kind: "held", temperatureC })),
  fc
    .tuple(temperature, fc.double({ min: 1, max: 500, noNaN: true }))
    .map(([airC, filmWm2K]): Face => ({ kind: "film", airC, filmWm2K })),
);
const fluxes = fc
  .double({ min: -3000, max: 3000, noNaN: true })
  .map((fluxWm2): Face => ({ kind: "flux", fluxWm2 }));

test("the error against the series falls four times with each halving of cell and step", () => {
  const errors = [10, 20, 40, 80].map((cells) => {
    const front: Face = { kind: "flux", fluxWm2: 2000 };
    const heating = { slab: NYLON, startC: 0, front, back: INSULATED, cells, stepS: 80 / cells };
    const found = conduct(heating, [64])[0];
    return Math.abs((found?.frontC ?? Number.NaN) - fluxSlabRiseK(si, 2000, 64, 1));
  });
  const orders = errors.slice(1).map((error, i) => Math.log2((errors[i] ?? Number.NaN) / error));
  console.log(`order of convergence, flux: ${orders.map((order) => order.toFixed(2)).join(", ")}`);
  for (const order of orders) expect(Math.abs(order - 2)).toBeLessThan(0.15);
});

test("cooling in air follows the series of its own roots, faces and core", () => {
  const film: Face = { kind: "film", filmWm2K: 60, airC: 20 };
  const heating = { slab: NYLON, startC: 180, front: film, back: INSULATED, cells: 160, stepS: 0.5 };
  const diffusivity = si.k / (si.rho * si.cp);
  for (const found of conduct(heating, [30, 120, 600])) {
    const fourier = (diffusivity * found.timeS) / si.thicknessM ** 2;
    const at = (part: number) => 20 + 160 * coolingPart(biotNumber(NYLON, 60), fourier, part);
    expect(found.frontC).toBeCloseTo(at(1), 2);
    expect(found.coreC).toBeCloseTo(at(0.5), 2);
    expect(found.backC).toBeCloseTo(at(0), 2);
  }
});

const random = fc.record({
  slab: slabs,
  startC: temperature,
  cells: fc.constantFrom(8, 20, 50),
  stepS: fc.double({ min: 0.2, max: 20, noNaN: true }),
});
const check = <T>(values: fc.Arbitrary<T>, law: (value: T) => void) =>
  fc.assert(fc.property(values, law), { seed: SEED, numRuns: 150 });

test("heat in through the faces is heat stored, to round-off", () => {
  const face = fc.oneof(quietFaces, fluxes);
  check(fc.tuple(random, face, face), ([rest, front, back]) => {
    const heating: Heating = { ...rest, front, back };
    const found = conduct(heating, [7, 300]).at(-1);
    if (!found) throw new Error("nothing found");
    const perCell = (rest.slab.densityKgM3 * rest.slab.heatJKgK * rest.slab.thicknessMm) / 1000 / rest.cells;
    const stored = found.cellsC.reduce((sum, one) => sum + (one - rest.startC) * perCell, 0);
    expect(Math.abs(stored - found.inJm2)).toBeLessThan(1e-9 * perCell * rest.cells * 1000);
  });
});

test("nothing is ever hotter or colder than start and surroundings", () => {
  check(fc.tuple(random, quietFaces, quietFaces), ([rest, front, back]) => {
    const bounds = [rest.startC, ...surroundings(front), ...surroundings(back)];
    // Crank and Nicolson's steps may pass a bound by a trace where a step is long for a cell.
    const slack = 1e-3 * (Math.max(...bounds) - Math.min(...bounds)) + 1e-9;
    for (const found of conduct({ ...rest, front, back }, [5, 20, 60, 240])) {
      const all = [found.frontC, found.backC, ...found.cellsC];
      expect(Math.max(...all)).toBeLessThanOrEqual(Math.max(...bounds) + slack);
      expect(Math.min(...all)).toBeGreaterThanOrEqual(Math.min(...bounds) - slack);
    }
  });
});

function surroundings(face: Face): number[] {
  if (face.kind === "held") return [face.temperatureC];
  return face.kind === "film" ? [face.airC] : [];
}

test("left long enough, a slab comes to the closed form's faces", () => {
  check(fc.tuple(slabs, quietFaces, fluxes, temperature), ([slab, front, back, startC]) => {
    const steady = steadyFaces(slab, front, back);
    if (steady === undefined) return;
    const found = conduct({ slab, startC, front, back, cells: 20, stepS: 500 }, [1_000_000])[0];
    expect(found?.frontC).toBeCloseTo(steady.frontC, 3);
    expect(found?.backC).toBeCloseTo(steady.backC, 3);
  });
});
