import { readFileSync } from "node:fs";
import { readyFor } from "@treewright/core/answer/ready.ts";
import { tryAll } from "@treewright/core/answer/sweep.ts";
import { wholeAt } from "@treewright/core/answer/whole.ts";
import { cellsOf, MESHES, type Mesh } from "@treewright/core/fit/panel-cells.ts";
import { AS_FOUND, opened } from "@treewright/core/reach/move.ts";
import { settingsOf } from "@treewright/core/reach/settings.ts";
import { readCase } from "@treewright/core/survey/read-case.ts";

// `npx tsx evidence/bench/gaits.ts`: ms, the best of some runs and the median, since the machine may be shared. One core.
// Figures to compare, not tests. Aim: 41 settings at three gaits and at rest on 2,160 cells in 150 ms.

const name = "09-alter-in-the-saddle";
const read = readCase(readFileSync(new URL(`../../examples/cases/${name}.json`, import.meta.url), "utf8"));
if (!read.ok) throw new Error(`${name} is not a case`);
const { survey } = read;
const SETTINGS = 41;
const SEED = 1;

function timed(runs: number, work: () => unknown): { readonly best: number; readonly median: number } {
  const taken = Array.from({ length: runs }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  }).sort((a, b) => a - b);
  return { best: taken[0] ?? 0, median: taken[runs >> 1] ?? 0 };
}

function told(what: string, { best, median }: ReturnType<typeof timed>): void {
  console.log(`${best.toFixed(1).padStart(9)}${median.toFixed(1).padStart(9)}  ${what}`);
}

console.log(`${"best".padStart(9)}${"median".padStart(9)}  ms, case ${name}`);

/** A sweep as the road makes it: every setting a whole tree, at rest and in each gait. */
function sweep(mesh: Mesh, runs: number): void {
  const ready = readyFor(survey, 0, SEED, mesh);
  const settings = settingsOf(survey, ready.today?.head.spreadMm ?? 0).slice(0, SETTINGS);
  const wholes = tryAll(ready, settings, mesh).wholes;
  const rests = wholes.filter((whole) => whole?.rest?.ok).length;
  const gaits = wholes.flatMap((whole) => whole?.ridden().gaits.filter(({ ok }) => ok) ?? []).length;
  const what = `${settings.length} settings at rest and three gaits on ${cellsOf(mesh)} cells`;
  told(
    `${what} (${rests} rest, ${gaits} gaits do)`,
    timed(runs, () => tryAll(ready, settings, mesh)),
  );
}
sweep(MESHES.sweep, 15);
sweep({ nx: 105, nv: 48 }, 5);

/** One setting 4 mm wider, at rest and in three gaits from today's pose. */
function growth(): void {
  const points = (
    [
      [24, 21],
      [45, 24],
      [90, 24],
      [105, 48],
      [168, 90],
      [240, 105],
      [312, 160],
    ] as const
  ).map(([nx, nv]) => {
    const mesh = { nx, nv };
    const ready = readyFor(survey, 0, SEED, mesh);
    const start = wholeAt(ready.means, AS_FOUND, { mesh })?.pose;
    const { best } = timed(7, () => wholeAt(ready.means, opened(4), { mesh, start })?.ridden());
    const cells = cellsOf(mesh);
    console.log(`${best.toFixed(2).padStart(9)} ${" ".repeat(9)} one setting, ${cells} cells`);
    return { cells, best };
  });
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return;
  const exponent = Math.log(last.best / first.best) / Math.log(last.cells / first.cells);
  console.log(
    `time grows with the number of cells to the power ${exponent.toFixed(2)}, from ${first.cells} to ${last.cells}`,
  );
}
growth();
const { rss, heapUsed } = process.memoryUsage();
const megabytes = (bytes: number) => (bytes / 2 ** 20).toFixed(0);
console.log(`memory: ${megabytes(rss)} MB in all, ${megabytes(heapUsed)} MB of it in use on the heap`);
