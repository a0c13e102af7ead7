import { roomFor } from "@treewright/core/engine/contact/room.ts";
import { settle } from "@treewright/core/engine/contact/settle.ts";
import { inputsOf, problemOf } from "../contact/model-case.ts";

// `npx tsx evidence/bench/growth.ts`: time and memory of one equilibrium from 1,000 to 100,000 cells, and the power they grow with.
// Figures to compare, not tests; the best of many runs, since the machine may be shared.

const base = inputsOf("ct-horse-S+20");
const MESHES = [
  [27, 18],
  [45, 24],
  [72, 36],
  [111, 45],
  [156, 64],
  [225, 112],
  [300, 167],
] as const;

const rows = MESHES.map(([nx, nv]) => {
  const problem = problemOf({ ...base, mesh: { nx, nv } });
  const room = roomFor(problem.cells.n);
  let best = Number.POSITIVE_INFINITY;
  for (let run = 0; run < 25; run++) {
    const start = performance.now();
    if (!settle(problem, { room }).ok) throw new Error("no rest");
    best = Math.min(best, performance.now() - start);
  }
  return { cells: problem.cells.n, ms: best, bytes: bytesIn(problem) + bytesIn(room) };
});

for (const { cells, ms, bytes } of rows)
  console.log(
    `${String(cells).padStart(7)} cells: ${ms.toFixed(2).padStart(8)} ms, ${(1000 * (ms / cells)).toFixed(3)} us a cell, ` +
      `${(bytes / 1e6).toFixed(1)} MB of arrays (${Math.round(bytes / cells)} bytes a cell)`,
  );
console.log(
  `time grows with the power ${power(rows.map(({ ms }) => ms)).toFixed(2)}, arrays with ${power(rows.map(({ bytes }) => bytes)).toFixed(2)}; ` +
    `whole process ${(process.memoryUsage().rss / 1e6).toFixed(0)} MB`,
);

/** Slope of the straight line of least squares through the logarithms. */
function power(values: readonly number[]): number {
  const x = rows.map(({ cells }) => Math.log(cells));
  const y = values.map(Math.log);
  const mean = (of: readonly number[]): number => of.reduce((sum, one) => sum + one, 0) / of.length;
  const [mx, my] = [mean(x), mean(y)];
  const product = x.reduce((sum, one, i) => sum + (one - mx) * ((y[i] ?? 0) - my), 0);
  return product / x.reduce((sum, one) => sum + (one - mx) ** 2, 0);
}

/** Bytes of all typed arrays in a value, each once. */
function bytesIn(value: unknown): number {
  if (ArrayBuffer.isView(value)) return value.byteLength;
  if (typeof value !== "object" || value === null) return 0;
  return Object.values(value).reduce((sum: number, one) => sum + bytesIn(one), 0);
}
