import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { FINE, recordsOf } from "../second-ways/compare.ts";
import { restOfElements } from "../second-ways/finite-elements.ts";
import { SOFT_LAYERS } from "../second-ways/soft-layer.ts";
import { onSprings } from "../second-ways/springs.ts";

// Finite elements of a soft layer, run anew and compared with the frozen values; `--write` freezes them.
const file = new URL("../published/second-ways.json", import.meta.url);
/** The frozen values must come out again this near, relative: another build of the solver adds up in another order. */
const AGAIN = 1e-3;

const version = spawnSync("ccx", ["-v"], { encoding: "utf8" }).stdout.match(/Version\s+(\S+)/i)?.[1] ?? "";
const program = `CalculiX ccx ${version} (Debian)`;
const records = SOFT_LAYERS.flatMap((given) => {
  const start = performance.now();
  const springs = onSprings(given);
  const springsMs = performance.now() - start;
  const rest = restOfElements(given, springs, FINE);
  console.log(
    `${given.id}: ${rest.elements} elements, ${(rest.ms / 1000).toFixed(1)} s a pose, ${rest.runs} poses; bed of springs ${springsMs.toFixed(0)} ms at 25,920 cells`,
  );
  return recordsOf(given, rest, program);
});
if (process.argv.includes("--write")) writeFileSync(file, `${JSON.stringify(records, null, 1)}\n`);
else {
  const before: { id: string; values: Record<string, { expected: number }> }[] = JSON.parse(
    readFileSync(file, "utf8"),
  );
  for (const { id, values } of records) {
    for (const [name, { expected }] of Object.entries(values)) {
      const was = before.find((one) => one.id === id)?.values[name]?.expected ?? Number.NaN;
      if (Math.abs(expected / was - 1) < AGAIN) continue;
      console.log(`${id}/${name}: frozen ${was}, found ${expected}`);
      process.exitCode = 1;
    }
  }
}
