import { settle } from "@treewright/core/engine/contact/settle.ts";
import { expect, test } from "vitest";
import { byQuadraticProgramme } from "./general-qp.ts";
import { shallowProblem } from "./shallow.ts";

/** Pose and pressures of both ways, relative to the largest. */
const NEAR = 1e-6;

test("without friction and linearised, a general solver of quadratic programmes finds the same rest", async () => {
  const problem = shallowProblem(30, 9);
  const own = bestOf(20, () => settle(problem));
  const rest = own.found;
  if (!rest.ok) throw new Error(rest.why);
  const other = await byQuadraticProgramme(problem);
  const touching = rest.pressure.filter((p) => p > 0).length;
  expect(touching).toBeLessThan(0.9 * problem.cells.n);
  expect(touching).toBeGreaterThan(0.5 * problem.cells.n);

  const most = Math.max(...rest.pressure);
  const apart =
    Math.max(...other.pressure.map((p, i) => Math.abs(p - (rest.pressure[i] ?? Number.NaN)))) / most;
  expect(apart).toBeLessThan(NEAR);
  for (const name of ["heave", "pitch", "roll"] as const)
    expect(Math.abs(other.pose[name] / rest.pose[name] - 1)).toBeLessThan(NEAR);
  console.log(
    `${problem.cells.n} cells, ${touching} touching: pressures apart by ${apart.toExponential(1)} of the largest; ` +
      `own solver ${own.ms.toFixed(2)} ms, general solver ${other.ms.toFixed(0)} ms, ${(other.ms / own.ms).toFixed(0)} times as long`,
  );
});

test("a load 5 % heavier is told apart", async () => {
  const problem = shallowProblem(15, 6);
  const other = await byQuadraticProgramme({
    ...problem,
    load: { ...problem.load, weightN: 1.05 * problem.load.weightN },
  });
  const rest = settle(problem);
  expect(rest.ok && Math.abs(other.pose.heave / rest.pose.heave - 1)).toBeGreaterThan(0.01);
});

function bestOf<T>(runs: number, work: () => T): { readonly found: T; readonly ms: number } {
  let best = Number.POSITIVE_INFINITY;
  let found = work();
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    found = work();
    best = Math.min(best, performance.now() - start);
  }
  return { found, ms: best };
}
