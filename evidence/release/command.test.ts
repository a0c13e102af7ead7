import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { z } from "zod";
import { npm } from "../../scripts/npm.mjs";
import { root } from "../house/sources.ts";
import { node, packAndInstall } from "./packed.ts";
import { packagesOfMap, partsOf, sayingsOf } from "./parts.ts";

// What these cannot see: Windows and macOS, and Nodes other than the one that runs them. npm itself is the machine's.

const installed = packAndInstall();
afterAll(installed.remove);
const there = join(installed.own, "dist/treewright.mjs");
const here = join(root, "apps/cli/bin/treewright.mjs");
const example = "examples/cases/09-alter-in-the-saddle.json";
const allFiles = readdirSync(installed.own, { recursive: true, encoding: "utf8" }).map((path) =>
  path.replaceAll("\\", "/"),
);

describe("the package, installed into an empty folder without a network", () => {
  // One whole answer with its papers, twice: the longest part of this file.
  it("answers the example word for word as the checkout does, and writes the same papers byte for byte", () => {
    const words = ["--sheets", "papers"];
    const said = node(
      [there, "answer", join("node_modules/treewright", example), ...words],
      installed.folder,
    );
    const papers = join(installed.folder, "papers");
    const told = node([here, "answer", example, "--sheets", join(installed.folder, "ours")], root);
    expect(said).toBe(told);
    expect(said).toContain("alter");
    const names = readdirSync(papers).sort();
    expect(names.length).toBeGreaterThan(5);
    expect(readdirSync(join(installed.folder, "ours")).sort()).toEqual(names);
    for (const name of names)
      expect(
        readFileSync(join(papers, name)).equals(readFileSync(join(installed.folder, "ours", name))),
      ).toBe(true);
  });

  it.each([
    ["schema", ["schema"]],
    ["check", ["check", "examples/cases"]],
    ["sizes", ["sizes", "examples/stock/plates-in-the-van.json"]],
  ])("says the same to %s", (_name, words) => {
    expect(node([there, ...words], installed.own)).toBe(node([here, ...words], root));
  });

  it("stands under the name that npm links, which leads to it", () => {
    expect(node(npm(["exec", "--offline", "--", "treewright", "help"]), installed.folder)).toBe(
      node([here, "help"], root),
    );
  });

  it("needs nothing but Node's own modules, and holds no path of the machine it was made on", () => {
    const text = readFileSync(there, "utf8");
    const from = [...text.matchAll(/^import .* from "([^"]+)";$/gm)].map(([, name]) => name ?? "");
    const builtIn = z.array(z.string()).parse(process.getBuiltinModule("module").builtinModules);
    expect(from.length).toBeGreaterThan(5);
    expect(from.filter((name) => !builtIn.includes(name.replace(/^node:/, "")))).toEqual([]);
    expect(text).not.toContain(root);
    expect(allFiles.filter((path) => /\.tsx?$/.test(path))).toEqual([]);
  });
});

describe("what stands in the package about the work of others", () => {
  const said = sayingsOf(join(installed.own, "dist"));
  // Neither the bundler's map nor the folders of the letters comes from our list.
  const code = packagesOfMap(installed.map);
  const letters = allFiles.flatMap((path) => /^node_modules\/@[^/]+\/[^/]+(?=\/.*\.woff$)/.exec(path) ?? []);
  const joins = readFileSync(there, "utf8").includes("__commonJSMin") ? ["node_modules/rolldown"] : [];

  it("names every package whose code or letters are in it, and no other", () => {
    expect(code).toContain("node_modules/pdfkit");
    expect(letters).toHaveLength(10);
    const found = partsOf([...code, ...letters, ...joins]);
    expect(said.components).toEqual(found);
    expect(said.noticed).toEqual(found);
  });

  it("lays the licence of each font beside its letters too", () => {
    for (const folder of new Set(letters))
      expect(readFileSync(join(installed.own, folder, "LICENSE"), "utf8")).toContain("SIL OPEN FONT LICENSE");
  });
});
