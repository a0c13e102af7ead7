/** Makes the command's package in the folder named: one file that npm can install without a network. */
import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { root } from "../../evidence/house/sources.ts";
import { npm } from "../npm.mjs";
import { NOTICES, SBOM } from "../shipped/say-what-is-shipped.ts";
import { bundleCommand, fontFiles, MAP } from "./bundle-command.ts";

type Manifest = { name: string; version: string; license: string; description: string; engines: object };
const readManifest = (folder: string): Manifest =>
  JSON.parse(readFileSync(join(root, folder, "package.json"), "utf8"));

/** Packages of fonts, each with its version. They lie inside ours, cut down to the files that are read. */
function fontPackages(): Record<string, string> {
  const names = fontFiles.map((path) => path.split("/").slice(0, 2).join("/"));
  return Object.fromEntries(
    [...new Set(names)].map((name) => [name, readManifest(`node_modules/${name}`).version]),
  );
}

function copy(from: string, to: string): void {
  mkdirSync(dirname(to), { recursive: true });
  cpSync(join(root, from), to, { recursive: true });
}

/** Everything that the package holds, laid out in `folder`. */
async function layOut(own: Manifest, folder: string): Promise<void> {
  const fonts = fontPackages();
  await bundleCommand(
    { name: own.name, version: own.version, says: "Treewright's command" },
    join(folder, "dist"),
  );
  const { name, version, description, license, engines } = own;
  const manifest = {
    ...{ name, version, description, license, type: "module", engines },
    bin: { treewright: "dist/treewright.mjs" },
    files: ["dist/*.mjs", `dist/${NOTICES}`, `dist/${SBOM}`, "examples"],
    dependencies: fonts,
    bundleDependencies: Object.keys(fonts),
  };
  writeFileSync(join(folder, "package.json"), `${JSON.stringify(manifest, null, 2)}\n`);
  copy("LICENSE", join(folder, "LICENSE"));
  copy("apps/cli/README.md", join(folder, "README.md"));
  for (const kind of ["cases", "jobs", "stock"]) copy(`examples/${kind}`, join(folder, "examples", kind));
  const ofFonts = Object.keys(fonts).flatMap((font) => [`${font}/package.json`, `${font}/LICENSE`]);
  for (const path of [...fontFiles, ...ofFonts])
    copy(`node_modules/${path}`, join(folder, "node_modules", path));
}

/** Path of the package, made anew in `folder`, with the map of its one file beside it. Nothing else there is touched. */
async function pack(folder: string): Promise<string> {
  const own = readManifest(".");
  const laidOut = mkdtempSync(join(tmpdir(), "treewright-package-"));
  try {
    await layOut(own, laidOut);
    mkdirSync(folder, { recursive: true });
    const args = npm(["pack", "--ignore-scripts", "--loglevel=error", "--pack-destination", folder]);
    const done = spawnSync(process.execPath, args, { cwd: laidOut, encoding: "utf8" });
    if (done.status !== 0) throw new Error(`npm pack failed: ${done.stderr}`);
    cpSync(join(laidOut, "dist", MAP), join(folder, `${own.name}-${own.version}.map`));
  } finally {
    rmSync(laidOut, { recursive: true, force: true });
  }
  return join(folder, `${own.name}-${own.version}.tgz`);
}

const folder = process.argv[2];
if (folder === undefined) throw new Error("pack: name the folder that the package goes into");
console.log(await pack(resolve(folder)));
