// Builds the page when its sources changed since the last build.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { builtOnce } from "./built-once.mjs";
import { root } from "./ready.mjs";

/** Everything the page is made of. */
const sources = [
  "core/src",
  "bridges",
  "apps/web",
  "examples",
  "package-lock.json",
  "tsconfig.base.json",
  "scripts/shipped",
  "evidence/house/licences.ts",
];

function build() {
  console.log("Building the page ...");
  const vite = join(root, "node_modules/vite/bin/vite.js");
  const done = spawnSync(process.execPath, [vite, "build", "--logLevel", "warn"], {
    cwd: join(root, "apps/web"),
    stdio: ["ignore", "inherit", "inherit"],
  });
  return done.status === 0;
}

/** Returns true when the page stands, built now or before. */
export const buildPage = () => builtOnce({ name: "page", sources, folder: "apps/web/dist", build });
