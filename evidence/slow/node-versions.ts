import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { z } from "zod";
import { npm } from "../../scripts/npm.mjs";
import { FROZEN } from "../number/frozen.ts";

// The same figures, to the last bit, in Node 20 (this one), 22 and 24. The other Nodes come from npm's packages of Node's
// own binaries, by exact version. `--write` records the run.

const VERSIONS = ["22.23.3", "24.21.0"] as const;
const root = fileURLToPath(new URL("../../", import.meta.url));
const record = new URL("./node-versions.json", import.meta.url);

const run = z.object({ node: z.string(), v8: z.string(), figures: z.record(z.string(), z.string()) });
type Run = z.infer<typeof run>;

function figuresIn(program: string): Run {
  const done = spawnSync(program, ["--import", "tsx", "evidence/slow/figures.ts"], {
    cwd: root,
    encoding: "utf8",
    maxBuffer: 1 << 26,
  });
  if (done.status !== 0) throw new Error(`${program} ended with ${done.status}: ${done.stderr.slice(-800)}`);
  return run.parse(JSON.parse(done.stdout));
}

/** Path of a Node of this version for this machine, fetched into `.cache` the first time. */
function nodeOf(version: string): string {
  const name = `node-${process.platform}-${process.arch}`;
  const folder = `${root}.cache/node-versions/${version}`;
  const program = `${folder}/package/bin/node`;
  if (existsSync(program)) return program;
  mkdirSync(folder, { recursive: true });
  take(process.execPath, npm(["pack", "--silent", `${name}@${version}`]), folder);
  take("tar", ["-xzf", `${name}-${version}.tgz`], folder);
  return program;
}

function take(program: string, args: readonly string[], folder: string): void {
  const done = spawnSync(program, args, { cwd: folder, encoding: "utf8" });
  if (done.status !== 0) throw new Error(`${program} ${args.join(" ")}: ${done.stderr}`);
}

const here = figuresIn(process.execPath);
const frozen = z.record(z.string(), z.string()).parse(FROZEN);
const differs = (from: Record<string, string>, to: Record<string, string>): string[] =>
  Object.keys(from).filter((name) => from[name] !== to[name]);

const wrong = [...differs(frozen, here.figures)];
const runs = VERSIONS.map((version) => {
  const there = figuresIn(nodeOf(version));
  wrong.push(...differs(here.figures, there.figures).map((name) => `${name} in Node ${there.node}`));
  return { node: there.node, v8: there.v8 };
});
const count = Object.keys(here.figures).length;
for (const name of wrong) console.log(`differs: ${name}`);
console.log(
  `${count} fingerprints in Node ${here.node}, ${runs.map(({ node }) => node).join(", ")}: ${wrong.length === 0 ? "the same to the last bit" : "NOT the same"}`,
);
if (wrong.length > 0) process.exitCode = 1;
const result = {
  fingerprints: count,
  same: wrong.length === 0,
  runs: [{ node: here.node, v8: here.v8 }, ...runs],
};
if (process.argv.includes("--write")) writeFileSync(record, `${JSON.stringify(result, null, 1)}\n`);
