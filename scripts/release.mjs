// npm run release: the page, then the command's package, in .cache/release or the folder named. The last line is the package's path.
import { spawnSync } from "node:child_process";
import { join, resolve } from "node:path";
import { buildPage } from "./page.mjs";
import { makeReady, root } from "./ready.mjs";

try {
  makeReady();
  if (!buildPage()) throw new Error("the page could not be built; the lines above say why");
  const folder = resolve(process.argv[2] ?? join(root, ".cache/release"));
  const args = ["--import", "tsx", join(root, "scripts/release/pack.ts"), folder];
  const done = spawnSync(process.execPath, args, { cwd: root, stdio: ["ignore", "inherit", "inherit"] });
  process.exitCode = done.status ?? 1;
} catch (error) {
  console.error(error.message);
  process.exitCode = 1;
}
