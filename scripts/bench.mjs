// npm run bench: every benchmark after the other, each in its own process so that none warms the next.
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { makeReady, root } from "./ready.mjs";

makeReady();
const folder = join(root, "evidence/bench");
const wanted = process.argv.slice(2);
for (const name of readdirSync(folder).sort()) {
  if (!name.endsWith(".ts") || name.endsWith(".test.ts")) continue;
  if (wanted.length > 0 && !wanted.some((word) => name.includes(word))) continue;
  console.log(`\n${name}`);
  const done = spawnSync(process.execPath, ["--import", "tsx", join(folder, name)], {
    cwd: root,
    stdio: "inherit",
  });
  if (done.status !== 0) process.exitCode = 1;
}
