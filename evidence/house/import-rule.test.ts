import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { root } from "./sources.ts";

/** A small project in which every line breaks one rule: a rule that says nothing of its line is dead. */
const planted: readonly [rule: string, path: string, imports: string][] = [
  ["engine-knows-engine", "core/src/engine/b.ts", "../terms/target.ts"],
  ["records-know-engine", "core/src/records/b.ts", "../terms/target.ts"],
  ["terms-import-nothing", "core/src/terms/b.ts", "../engine/target.ts"],
  ["survey-looks-up", "core/src/survey/a.ts", "../shape/target.ts"],
  ["shape-looks-up", "core/src/shape/a.ts", "../reach/target.ts"],
  ["reach-looks-up", "core/src/reach/a.ts", "../fit/target.ts"],
  ["fit-looks-up", "core/src/fit/a.ts", "../judge/target.ts"],
  ["judge-looks-up", "core/src/judge/a.ts", "../report/target.ts"],
  ["report-looks-up", "core/src/report/a.ts", "../answer.ts"],
  ["report-looks-up", "core/src/report/b.ts", "../papers.ts"],
  ["answer-looks-up", "core/src/answer/a.ts", "../report/target.ts"],
  ["core-is-pure", "core/src/fit/b.ts", "comlink"],
  ["core-is-pure", "core/src/fit/c.ts", "node:fs"],
  ["bridges-know-engine", "bridges/paper/src/a.ts", "../../../core/src/judge/target.ts"],
  ["bridges-know-no-app", "bridges/paper/src/b.ts", "../../../apps/cli/src/target.ts"],
  ["apps-stand-alone", "apps/web/src/a.ts", "../../cli/src/target.ts"],
  ["data-base-behind-store", "apps/web/src/e.ts", "dexie"],
  ["pdf-library-behind-paper", "apps/cli/src/a.ts", "pdfkit"],
  ["node-stays-outside", "bridges/paper/src/c.ts", "node:fs"],
  ["node-stays-outside", "apps/web/src/b.ts", "node:fs"],
  ["no-circle", "core/src/fit/d.ts", "./d.ts"],
  ["import-leads-somewhere", "apps/cli/src/b.ts", "./nowhere.ts"],
];
const targets = ["engine", "terms", "shape", "reach", "fit", "judge", "report"].map(
  (room) => `core/src/${room}/target.ts`,
);
const good: readonly [path: string, imports: string][] = [
  ["core/src/judge/good.ts", "../fit/target.ts"],
  ["bridges/paper/src/good-node.ts", "node:fs"],
  ["apps/cli/src/good.ts", "../../../core/src/answer.ts"],
];

const folder = mkdtempSync(join(tmpdir(), "import-rule-"));
afterAll(() => rmSync(folder, { recursive: true }));

function write(path: string, text: string): void {
  mkdirSync(dirname(join(folder, path)), { recursive: true });
  writeFileSync(join(folder, path), text);
}

function violations(): { rule: string; from: string }[] {
  for (const path of [...targets, "core/src/answer.ts", "core/src/papers.ts", "apps/cli/src/target.ts"])
    write(path, "export const a = 1;\n");
  for (const [, path, imports] of planted) write(path, `import * as a from "${imports}";\nexport { a };\n`);
  for (const [path, imports] of good) write(path, `import type * as a from "${imports}";\nexport { a };\n`);
  write("tsconfig.json", '{ "compilerOptions": { "allowImportingTsExtensions": true, "module": "ESNext" } }');
  for (const name of ["comlink", "dexie", "pdfkit"]) {
    write(`node_modules/${name}/package.json`, JSON.stringify({ name, version: "1.0.0", main: "index.js" }));
    write(`node_modules/${name}/index.js`, "module.exports = 1;\n");
  }
  const program = join(root, "node_modules/dependency-cruiser/bin/dependency-cruise.mjs");
  const config = join(root, ".dependency-cruiser.mjs");
  const args = [program, "--config", config, "--output-type", "json", "core", "bridges", "apps"];
  const done = spawnSync(process.execPath, args, { cwd: folder, encoding: "utf8", maxBuffer: 1 << 26 });
  const { summary } = JSON.parse(done.stdout);
  return summary.violations.map((one: { rule: { name: string }; from: string }) => ({
    rule: one.rule.name,
    from: one.from,
  }));
}

describe("the import rule", () => {
  const found = violations();
  it.each(planted)("%s refuses the line in %s", (rule, path) => {
    expect(found).toContainEqual({ rule, from: path });
  });
  it.each(good)("lets the line in %s pass", (path) => {
    expect(found.filter((one) => one.from === path)).toEqual([]);
  });
});
