// Builds the command as one file, as a release has it, when its sources changed since the last build.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { builtOnce } from "./built-once.mjs";
import { root } from "./ready.mjs";

/** Everything the command is made of. */
const sources = [
  "core/src",
  "bridges",
  "apps/cli",
  "package-lock.json",
  "tsconfig.base.json",
  "scripts/release",
  "scripts/shipped",
  "evidence/house/licences.ts",
];
const folder = ".cache/command";

function build() {
  const args = ["--import", "tsx", join(root, "scripts/release/make-command.ts"), join(root, folder)];
  const done = spawnSync(process.execPath, args, { cwd: root, stdio: ["ignore", "inherit", "inherit"] });
  return done.status === 0;
}

/** Path of the command; undefined where it cannot be built. */
export function builtCommand() {
  return builtOnce({ name: "command", sources, folder, build })
    ? join(root, folder, "treewright.mjs")
    : undefined;
}
