/*
 * What it costs to build a back and a tree, and to draw them. Figures to read, no test.
 * Run: npx tsx evidence/bench/shape.ts
 */
import { sectionsOf } from "../../core/src/fit/sections.ts";
import { buildBack, isLacking } from "../../core/src/shape/back.ts";
import { buildTree } from "../../core/src/shape/tree.ts";
import { wantedHead } from "../../core/src/shape/wanted-head.ts";
import { modelHorse } from "../shape/model-back.ts";
import { modelSaddle } from "../shape/model-saddle.ts";

/** Best of 40 rounds, microseconds a call. */
function micros(calls: number, run: () => unknown): string {
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < 40; round++) {
    const start = performance.now();
    for (let i = 0; i < calls; i++) run();
    best = Math.min(best, (performance.now() - start) / calls);
  }
  return (best * 1000).toFixed(1).padStart(10);
}

const horse = modelHorse({ noiseMm: 0.3 });
const dense = modelHorse({ stepMm: 0.4, reachMm: 160 });
const back = buildBack(horse, "cold");
const belief = buildTree(modelSaddle());
if (isLacking(back) || isLacking(belief)) throw new Error("the model horse or saddle lacks readings");
const sds = [...back.uncertain, ...belief.uncertain].map(
  (one) => [one.id, one.kind === "normal" ? one.sd : 0] as const,
);
const deviations = Object.fromEntries(sds);
const tree = belief.at(deviations);
const n = 2160;
const at = {
  x: Float64Array.from({ length: n }, (_, i) => (i * 430) / n),
  y: Float64Array.from({ length: n }, (_, i) => -150 + ((i * 37) % 300)),
};
const out = {
  z: new Float64Array(n),
  zx: new Float64Array(n),
  zy: new Float64Array(n),
  zxx: new Float64Array(n),
  zxy: new Float64Array(n),
  zyy: new Float64Array(n),
};
const surface = back.surface(deviations);

console.log("microseconds, best of 40 rounds");
console.log(
  micros(1, () => buildBack(horse, "cold")),
  "a back from three traces of 45 points",
);
console.log(
  micros(1, () => buildBack(dense, "cold")),
  "a back from three traces of 801 points",
);
console.log(
  micros(50, () => back.surface(deviations)),
  "the surface of one draw",
);
console.log(
  micros(10, () => surface(n, at.x, at.y, out)),
  `reading it at ${n} points`,
);
console.log(
  micros(50, () => belief.at(deviations)),
  "the tree of one draw",
);
console.log(
  micros(50, () => sectionsOf(back, tree, deviations)),
  "six sections against it",
);
console.log(
  micros(50, () =>
    wantedHead(back.sections.front, { depthMm: 95, clearanceMm: 50, panelMm: 20 }, deviations),
  ),
  "the wanted head",
);
