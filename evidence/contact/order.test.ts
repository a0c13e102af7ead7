import { expect, test } from "vitest";
import { type Cell, loadAtDepth, restOf } from "./foundation.ts";
import { type CaseInputs, inputsOf, problemOf } from "./model-case.ts";

// Observed orders of convergence: a curved panel wholly in contact against its own finest meshes, and a sphere on a square
// grid, where the edge of the contact cuts cells as it happens, against its closed form (Johnson 1985, 4.3, from memory).

/** The reference horse under so much weight that every cell touches. */
const FULL: CaseInputs = (() => {
  const inputs = inputsOf("ct-horse-S+0");
  return { ...inputs, load: { ...inputs.load, W: 1.7 * inputs.load.W } };
})();

test("a curved panel wholly in contact: heave, pitch and the sum of pressures settle with the square of the mesh", () => {
  const at = [1, 2, 4, 8].map((finer) => {
    const rest = restOf(problemOf({ ...FULL, mesh: { nx: 15 * finer, nv: 6 * finer } }));
    expect(rest.pressure.every((p) => p > 0)).toBe(true);
    return { heave: rest.pose.heave, pitch: rest.pose.pitch, normal: rest.normalOverLoad };
  });
  for (const of of ["heave", "pitch", "normal"] as const) {
    const [a = 0, b = 0, c = 0, d = 0] = at.map((one) => one[of]);
    const orders = [Math.log2((a - b) / (b - c)), Math.log2((b - c) / (c - d))];
    console.log(`full contact, ${of}: order ${orders.map((o) => o.toFixed(2)).join(", ")}`);
    for (const order of orders) expect(order).toBeGreaterThan(1.8);
  }
});

const STIFFNESS = 0.05 / 20;
const RADIUS = 100;
const DEPTH = 5;
const CONTACT = Math.sqrt(2 * RADIUS * DEPTH);
const EXACT = (Math.PI * STIFFNESS * CONTACT ** 4) / (4 * RADIUS);

/** Where the grid lies under the sphere, in cells. */
const OFFSETS = [
  [0.13, 0.29],
  [0.37, 0.07],
  [0.05, 0.43],
  [0.41, 0.33],
] as const;

/** Square cells about the sphere's lowest point, `across` of them over the contact's width. */
function square(across: number, [u, v]: readonly [number, number]): Cell[] {
  const h = (2 * CONTACT) / across;
  const reach = Math.ceil(0.6 * across);
  const cells: Cell[] = [];
  // The other half of the cells is the first one's mirror, so that the body does not lean.
  for (let i = -reach; i <= reach; i++) {
    for (let j = -reach; j <= reach; j++) {
      const [x, y] = [(i + u) * h, (j + v) * h];
      const z = (x * x + y * y) / (2 * RADIUS);
      cells.push([x, y, z, (h * h) / 2], [-x, -y, z, (h * h) / 2]);
    }
  }
  return cells;
}

test("a sphere's force on a square grid, errors averaged over four places of the grid, falls with the power 1.5 at least", () => {
  const meshes = [10, 20, 40, 80];
  const errors = meshes.map((across) => {
    const of = OFFSETS.map((offset) =>
      Math.abs(loadAtDepth(square(across, offset), STIFFNESS, DEPTH, EXACT) / EXACT - 1),
    );
    return of.reduce((sum, one) => sum + one, 0) / of.length;
  });
  const order = -slope(meshes.map(Math.log), errors.map(Math.log));
  console.log(
    `sphere: mean errors ${errors.map((e) => e.toExponential(1)).join(", ")}; order ${order.toFixed(2)}`,
  );
  expect(order).toBeGreaterThan(1.5);
  // One part in twenty more load would be seen at every mesh.
  for (const error of errors) expect(error).toBeLessThan(0.05);
});

/** Slope of the straight line of least squares. */
function slope(x: readonly number[], y: readonly number[]): number {
  const mean = (of: readonly number[]): number => of.reduce((sum, one) => sum + one, 0) / of.length;
  const [mx, my] = [mean(x), mean(y)];
  const product = x.reduce((sum, one, i) => sum + (one - mx) * ((y[i] ?? 0) - my), 0);
  return product / x.reduce((sum, one) => sum + (one - mx) ** 2, 0);
}
