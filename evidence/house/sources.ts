import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import type { SourceFile } from "./finding.ts";

export const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));

const leftOut = new Set(["node_modules", "dist", "out", ".git", ".cache", "coverage"]);

function* walk(folder: string): Generator<string> {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    if (leftOut.has(entry.name)) continue;
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* walk(path);
    else if (entry.isFile()) yield relative(root, path).split(sep).join("/");
  }
}

/** Paths of everything the project keeps: what git keeps or would; without git, every file. */
export function projectPaths(): string[] {
  if (!existsSync(join(root, ".git"))) return [...walk(root)].sort();
  const args = ["ls-files", "--cached", "--others", "--exclude-standard", "-z"];
  const listed = execFileSync("git", args, { cwd: root, encoding: "utf8", maxBuffer: 1 << 26 }).split("\0");
  return listed
    .filter((path) => path !== "" && existsSync(join(root, path)) && statSync(join(root, path)).isFile())
    .sort();
}

const isText = /\.(tsx?|mjs|css|html|json|md|ya?ml)$|^(LICENSE|\.ci\/run)$/;

/** Every text file of the project but the lock. */
export function projectTexts(): SourceFile[] {
  return projectPaths()
    .filter((path) => isText.test(path) && path !== "package-lock.json")
    .map((path) => ({ path, text: readFileSync(join(root, path), "utf8") }));
}
