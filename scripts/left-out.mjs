// Which test files need a program that is not on this machine: those that name it, or import a file that does.
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { missingPrograms } from "./debian.mjs";
import { root } from "./ready.mjs";

/** The words in a source text that tell that a program is used. */
const speaksOf = {
  chromium: /playwright-core|\/chromium/,
  ezdxf: /import ezdxf/,
  ccx: /"ccx"/,
  strace: /exec strace/,
  WebKitWebDriver: /"WebKitWebDriver"/,
  Xvfb: /"Xvfb"/,
  pdftoppm: /"pdf(toppm|totext|tocairo|info|fonts)"/,
};
const folders = ["core/src", "bridges", "apps", "evidence"];

function* sourcesUnder(folder) {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    if (entry.name === "node_modules" || entry.name === "dist") continue;
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* sourcesUnder(path);
    else if (/\.tsx?$/.test(entry.name)) yield path;
  }
}

function importsOf(path, text) {
  return [...text.matchAll(/from "(\.[^"]+)"/g)].map((match) => join(dirname(path), match[1]));
}

/** Test files, relative to the root, that cannot run here. */
export function testsToLeaveOut() {
  const words = missingPrograms().map((program) => speaksOf[program]);
  if (words.length === 0) return [];
  const texts = new Map();
  for (const folder of folders)
    for (const path of sourcesUnder(join(root, folder))) texts.set(path, readFileSync(path, "utf8"));
  const needing = new Set(
    [...texts].filter(([, text]) => words.some((word) => word.test(text))).map(([path]) => path),
  );
  for (let before = -1; before !== needing.size; ) {
    before = needing.size;
    for (const [path, text] of texts)
      if (importsOf(path, text).some((target) => needing.has(target))) needing.add(path);
  }
  return [...needing].filter((path) => /\.test\.tsx?$/.test(path)).map((path) => relative(root, path));
}
