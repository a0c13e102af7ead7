import { expect, test } from "vitest";
import { type Cell, disc, loadAtDepth, rectangle } from "./foundation.ts";

// Closed forms of Johnson, Contact Mechanics (1985) 4.3, from memory: sphere P = pi K a^4 / (4 R h), line
// P' = 2 K a^3 / (3 R h). Cells lie so that the edge of the contact falls on a cell's edge: then the rule of
// middles gives the second order; where it falls inside a cell the error is as small, but jumps.
const STIFFNESS = 0.05 / 20;
const RADIUS = 100;
const DEPTH = 5;
const CONTACT = Math.sqrt(2 * RADIUS * DEPTH);

function order(exact: number, cellsOf: (n: number) => Cell[]): number {
  const errors = [1, 2, 4].map((finer) =>
    Math.abs(loadAtDepth(cellsOf(finer), STIFFNESS, DEPTH, exact) / exact - 1),
  );
  const [coarse = 0, middle = 0, fine = 0] = errors;
  const found = [Math.log2(coarse / middle), Math.log2(middle / fine)];
  console.info(
    `errors ${errors.map((e) => e.toExponential(2)).join(", ")}; order ${found.map((o) => o.toFixed(2)).join(", ")}`,
  );
  return Math.min(...found);
}

test("sphere on a bed of springs: the load's error falls with the square of the mesh", () => {
  const exact = (Math.PI * STIFFNESS * CONTACT ** 4) / (4 * RADIUS);
  const found = order(exact, (n) => disc(1.25 * CONTACT, 25 * n, 12, (r) => (r * r) / (2 * RADIUS)));
  expect(found).toBeGreaterThan(1.9);
});

test("line contact on a bed of springs: the same", () => {
  const length = 50;
  const exact = ((2 * STIFFNESS * CONTACT ** 3) / (3 * RADIUS)) * length;
  const found = order(exact, (n) =>
    rectangle(length, 2.5 * CONTACT, 3, 50 * n, (y) => (y * y) / (2 * RADIUS)),
  );
  expect(found).toBeGreaterThan(1.9);
});
