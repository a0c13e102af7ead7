// Builds the page when its sources changed since the last build.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { alone } from "./lock.mjs";
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
const leftOut = new Set(["node_modules", "dist", "out", "coverage"]);
const stamp = join(root, "apps/web/dist/.sources");

function* filesUnder(path) {
  const full = join(root, path);
  if (!existsSync(full)) return;
  if (statSync(full).isFile()) yield path;
  else
    for (const name of readdirSync(full).sort()) if (!leftOut.has(name)) yield* filesUnder(`${path}/${name}`);
}

function hashOfSources() {
  const hash = createHash("sha256");
  for (const source of sources) {
    for (const path of filesUnder(source))
      hash
        .update(path)
        .update("\0")
        .update(readFileSync(join(root, path)));
  }
  return hash.digest("hex");
}

const stands = (hash) => existsSync(stamp) && readFileSync(stamp, "utf8") === hash;

function build(hash) {
  console.log("Building the page ...");
  const vite = join(root, "node_modules/vite/bin/vite.js");
  const done = spawnSync(process.execPath, [vite, "build", "--logLevel", "warn"], {
    cwd: join(root, "apps/web"),
    stdio: ["ignore", "inherit", "inherit"],
  });
  if (done.status === 0) writeFileSync(stamp, hash);
  return done.status === 0;
}

/** Returns true when the page stands, built now or before. */
export function buildPage() {
  const hash = hashOfSources();
  return stands(hash) || alone("page", () => stands(hash) || build(hash));
}
