import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { npm } from "../../scripts/npm.mjs";
import { root } from "../house/sources.ts";

/** The machine's own words to npm and Node are kept out: a stranger's machine has others. */
const bareEnvironment = (): NodeJS.ProcessEnv =>
  Object.fromEntries(Object.entries(process.env).filter(([name]) => !/^(npm_|NODE_|VITEST)/i.test(name)));

/** Runs Node in `folder`; throws with what it said when it does not end well. */
export function node(args: readonly string[], folder: string): string {
  const done = spawnSync(process.execPath, args, {
    cwd: folder,
    env: bareEnvironment(),
    encoding: "utf8",
    maxBuffer: 1 << 26,
  });
  if (done.status !== 0) throw new Error(`${args.join(" ")} ended with ${done.status}: ${done.stderr}`);
  return done.stdout;
}

export interface Installed {
  /** The folder somebody installed into; empty before, outside the checkout. */
  readonly folder: string;
  /** The package in it. */
  readonly own: string;
  /** The bundler's own map of the command: from which file each piece of it came. It does not go out. */
  readonly map: string;
  remove(): void;
}

/** Makes the package and installs it as a stranger without signal would: no network, and nothing that npm kept from before. */
export function packAndInstall(): Installed {
  const home = mkdtempSync(join(tmpdir(), "treewright-release-"));
  const said = node(["--import", "tsx", join(root, "scripts/release/pack.ts"), join(home, "made")], root);
  const tarball = said.trim().split("\n").at(-1) ?? "";
  const folder = join(home, "empty");
  mkdirSync(folder);
  writeFileSync(join(folder, "package.json"), "{}\n");
  const cache = join(home, "nothing-kept");
  node(npm(["install", "--offline", "--no-audit", "--no-fund", "--cache", cache, tarball]), folder);
  return {
    folder,
    own: join(folder, "node_modules/treewright"),
    map: tarball.replace(/\.tgz$/, ".map"),
    remove: () => rmSync(home, { recursive: true, force: true }),
  };
}
