import { readFileSync } from "node:fs";
import { DRAWS } from "@treewright/core/answer/draws.ts";
import { formsOf } from "@treewright/core/answer/forms.ts";
import { readyFor } from "@treewright/core/answer/ready.ts";
import { roadOf } from "@treewright/core/answer/road.ts";
import { drawAt, settledAt } from "@treewright/core/answer/settle.ts";
import { tryAll } from "@treewright/core/answer/sweep.ts";
import { type Answer, answer } from "@treewright/core/answer.ts";
import { MESHES } from "@treewright/core/fit/panel-cells.ts";
import { documentOf, PAPER_KINDS } from "@treewright/core/papers.ts";
import { settingsOf } from "@treewright/core/reach/settings.ts";
import { readCase } from "@treewright/core/survey/read-case.ts";
import { paperInNode } from "@treewright/paper/paper-node.ts";

// `npx tsx evidence/bench/answer.ts`: ms, the best of some runs and the median, since the machine may be shared.
// Figures to compare with the aims beside them, not tests. One core.

const name = "09-alter-in-the-saddle";
const text = readFileSync(new URL(`../../examples/cases/${name}.json`, import.meta.url), "utf8");
const read = readCase(text);
if (!read.ok) throw new Error(`${name} is not a case`);
const { survey } = read;
const SEED = 1;

function whole(): Answer {
  const road = answer(survey, { horse: 0, seed: SEED });
  for (;;) {
    const step = road.next();
    if (step.done) return step.value;
  }
}

async function timed(what: string, aim: string, runs: number, work: () => unknown): Promise<void> {
  const taken: number[] = [];
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    await work();
    taken.push(performance.now() - start);
  }
  taken.sort((a, b) => a - b);
  const [best, median] = [taken[0] ?? 0, taken[Math.floor(runs / 2)] ?? 0];
  const figures = [best, median].map((ms) => ms.toFixed(1).padStart(9)).join("");
  console.log(`${figures}  ${aim.padEnd(10)}${what}`);
}

console.log(`${"best".padStart(9)}${"median".padStart(9)}  aim       ms, case ${name}`);
await timed("reading a case", "", 20, () => readCase(text));
await timed("forms of horse, saddle and rider", "", 20, () => formsOf(survey, 0));

const ready = readyFor(survey, 0, SEED, MESHES.sweep);
const settings = settingsOf(survey, ready.today?.head.spreadMm ?? 0);
const { nx, nv } = MESHES.sweep;
await timed(`sweep of ${settings.length} settings on ${2 * nx * nv} cells`, "50", 15, () =>
  tryAll(ready, settings, MESHES.sweep),
);

const road = roadOf(survey, 0, SEED);
const setting = settings.find(({ changeMm }) => changeMm === 6);
const settled = settledAt(road, setting);
if (settled === undefined) throw new Error(`${name} has no forms`);
await timed(`${DRAWS} draws at today's setting, the chosen one and two each side`, "", 5, () =>
  drawAt(settled, SEED, 0, DRAWS),
);
await timed("first answer, before the draws", "", 7, () => answer(survey, { horse: 0, seed: SEED }).next());
await timed("whole answer with its draws", "2000", 5, whole);

const paper = await paperInNode();
await timed("whole answer with letter, sheet and template", "3000", 3, async () => {
  const done = whole();
  for (const kind of PAPER_KINDS) {
    const document = documentOf(kind, survey, done, paper.measure);
    if (document) await paper.paint(document);
  }
});
const megabytes = (bytes: number) => (bytes / 2 ** 20).toFixed(0);
const { rss, heapUsed } = process.memoryUsage();
console.log(`memory: ${megabytes(rss)} MB in all, ${megabytes(heapUsed)} MB of it in use on the heap`);
