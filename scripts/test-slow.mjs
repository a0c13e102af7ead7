// npm run test:slow: what takes too long for every change. Each part is one pass or one failure; the last line is the count.
// `npm run test:slow -- soft-layer` runs the parts with that word in the name; `-- --write` records what they found.
import { spawnSync } from "node:child_process";
import { takeFromDebian } from "./debian.mjs";
import { makeReady, root } from "./ready.mjs";

const node = process.execPath;
const tsx = [node, "--import", "tsx"];
const parts = [
  { name: "node-versions", command: [...tsx, "evidence/slow/node-versions.ts"] },
  { name: "passes", command: [...tsx, "evidence/slow/passes.ts"] },
  { name: "long-run", command: [...tsx, "evidence/slow/long-run.ts"] },
  { name: "soft-layer", command: [...tsx, "evidence/slow/soft-layer.ts"] },
  { name: "webkit-figures", command: [...tsx, "evidence/slow/webkit-figures.ts"] },
  { name: "webkit-scripts", command: [...tsx, "evidence/slow/webkit-scripts.ts"] },
  ...["fit", "reach", "judge"].map((room) => ({
    name: `mutation-${room}`,
    command: [node, "evidence/mutation/run.mjs", room],
  })),
];

const words = process.argv.slice(2).filter((word) => !word.startsWith("--"));
const passedOn = process.argv.slice(2).filter((word) => word.startsWith("--"));
const wanted = parts.filter(({ name }) => words.length === 0 || words.some((word) => name.includes(word)));

makeReady();
const leftOut = takeFromDebian();
let failed = 0;
for (const { name, command } of wanted) {
  console.log(`\n${name}`);
  const [program, ...args] = command;
  const done = spawnSync(program, [...args, ...passedOn], {
    cwd: root,
    stdio: ["ignore", "inherit", "inherit"],
  });
  if (done.status !== 0) failed++;
  console.log(`${done.status === 0 ? "passed" : "FAILED"}  ${name}`);
}
for (const line of leftOut) console.log(line);
console.log(`${wanted.length - failed} passed, ${failed} failed`);
process.exitCode = failed === 0 && wanted.length > 0 ? 0 : 1;
