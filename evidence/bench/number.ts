/*
 * Nanoseconds per call of engine/number beside Math, on the same arguments. A figure to read, no test.
 * Run: npx tsx evidence/bench/number.ts
 */
import * as number from "../../core/src/engine/number/index.ts";
import { drawNormal, drawUniform } from "../../core/src/engine/random.ts";

type Of1 = (x: number) => number;
type Of2 = (x: number, y: number) => number;

const COUNT = 4096;
const PASSES = 200;
const ROUNDS = 5;

/** Arguments spread evenly from lo to hi, in no order. */
function spread(lo: number, hi: number): Float64Array {
  return Float64Array.from({ length: COUNT }, (_, k) => lo + (hi - lo) * ((k * 0.6180339887) % 1));
}

/** The calls are written out in text of their own, so that no two functions share one compiled loop. */
function loopOf(call: string): (f: unknown, xs: Float64Array, ys: Float64Array) => number {
  const body = `let s = 0; for (let k = 0; k < ${COUNT}; k++) s += f(${call}); return s;`;
  return new Function("f", "xs", "ys", body) as ReturnType<typeof loopOf>;
}

let sink = 0;

/** Best of some rounds, ns per call. */
function nsPerCall(f: unknown, call: string, xs: Float64Array, ys: Float64Array): number {
  const loop = loopOf(call);
  let best = Infinity;
  for (let round = 0; round < ROUNDS; round++) {
    const start = performance.now();
    for (let pass = 0; pass < PASSES; pass++) sink += loop(f, xs, ys);
    best = Math.min(best, ((performance.now() - start) * 1e6) / (PASSES * COUNT));
  }
  return best;
}

function line(name: string, ours: number, theirs: number | undefined): void {
  const beside =
    theirs === undefined ? "" : `${theirs.toFixed(1).padStart(8)}${(ours / theirs).toFixed(2).padStart(8)}`;
  console.log(`${name.padEnd(24)}${ours.toFixed(1).padStart(8)}${beside}`);
}

const ofOne: readonly [string, Of1, Of1, number, number][] = [
  ["sin, to 3 rad", number.sin, Math.sin, -3, 3],
  ["sin, to 10,000 rad", number.sin, Math.sin, -1e4, 1e4],
  ["cos, to 3 rad", number.cos, Math.cos, -3, 3],
  ["tan, to 3 rad", number.tan, Math.tan, -3, 3],
  ["asin", number.asin, Math.asin, -1, 1],
  ["acos", number.acos, Math.acos, -1, 1],
  ["atan", number.atan, Math.atan, -5, 5],
  ["exp", number.exp, Math.exp, -10, 10],
  ["log", number.log, Math.log, 0.01, 10],
];
const ofTwo: readonly [string, Of2, Of2][] = [
  ["atan2", number.atan2, Math.atan2],
  ["pow", number.pow, Math.pow],
  ["hypot", number.hypot, Math.hypot],
];

console.log(`${"ns per call".padEnd(24)}${"ours".padStart(8)}${"Math".padStart(8)}${"ratio".padStart(8)}`);
for (const [name, ours, theirs, lo, hi] of ofOne) {
  const xs = spread(lo, hi);
  line(name, nsPerCall(ours, "xs[k]", xs, xs), nsPerCall(theirs, "xs[k]", xs, xs));
}
const [xs, ys] = [spread(0.1, 10), spread(-5, 5)];
for (const [name, ours, theirs] of ofTwo) {
  line(name, nsPerCall(ours, "xs[k], ys[k]", xs, ys), nsPerCall(theirs, "xs[k], ys[k]", xs, ys));
}
line(
  "one uniform draw",
  nsPerCall((k: number) => drawUniform(1, k, "spreadMm"), "k", xs, xs),
  undefined,
);
line(
  "one normal draw",
  nsPerCall((k: number) => drawNormal(1, k, "spreadMm"), "k", xs, xs),
  undefined,
);
if (!Number.isFinite(sink)) console.log("a sum was not finite");
