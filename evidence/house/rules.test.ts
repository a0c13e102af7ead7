import { describe, expect, it } from "vitest";
import { withoutReason } from "./dependencies.ts";
import { isAllowed, mayBeShipped } from "./licences.ts";
import { unportableNames } from "./portable-names.ts";
import { houseRules } from "./rules.ts";

const saysOf = (path: string, text: string): string[] =>
  houseRules.flatMap((rule) => rule({ path, text })).map((finding) => finding.says);

describe("house rules refuse", () => {
  const inCore = "core/src/fit/planted.ts";
  const planted: readonly [what: string, path: string, text: string, says: RegExp][] = [
    ["a sine of the machine's own", inCore, "export const a = Math.sin(1);", /engine\/number/],
    ["Math taken apart", inCore, "const { sin } = Math; export const a = sin(1);", /engine\/number/],
    ["a power", inCore, "export const a = 2 ** 3;", /pow from engine\/number/],
    ["a power in place", inCore, "let a = 2; a **= 3; export { a };", /pow from engine\/number/],
    ["the clock", inCore, "export const now = () => new Date();", /clock belongs in an app/],
    ["unseeded chance", inCore, "export const a = Math.random();", /seeded draw/],
    ["the process", inCore, "export const a = process.argv;", /belongs in an app/],
    ["the console", inCore, "console.log(1);", /let an app print it/],
    ["the network", inCore, "export const a = () => fetch('x');", /network belongs/],
    ["a word of the trade in records", "core/src/records/planted.ts", "// of a horse", /word of the trade/],
    ["a word of the trade in engine", "core/src/engine/planted.ts", "// widest head", /word of the trade/],
    ["a homeless file", "apps/web/src/utils.ts", "", /without a home/],
    ["a homeless folder", "core/src/helpers/a.ts", "", /without a home/],
    ["a host", "apps/web/src/planted.ts", `const a = "https://${"cdn.planted"}.org/x.js";`, /names no host/],
    ["a place on one machine", "apps/web/src/planted.ts", `const a = "/${"work"}/main";`, /names no place/],
    [
      "a script for one shell",
      "package.json",
      '{ "scripts": { "a": "tsc && node a.mjs" } }',
      /needs a shell/,
    ],
    [
      "a variable before a program",
      "package.json",
      '{ "scripts": { "a": "A=1 node a.mjs" } }',
      /needs a shell/,
    ],
    [
      "a pattern of files",
      "core/package.json",
      '{ "scripts": { "a": "biome check src/*.ts" } }',
      /needs a shell/,
    ],
    ["a quoted word", "package.json", '{ "scripts": { "a": "node -e \'1\'" } }', /needs a shell/],
    [
      "a start through a shell",
      "scripts/planted.mjs",
      `spawnSync(a, [], { shell: ${true} });`,
      /through a shell/,
    ],
    [
      "npm as a program",
      "scripts/planted.mjs",
      `spawnSync(${JSON.stringify("npm")}, []);`,
      /through a shell/,
    ],
    ["words in an element", "apps/web/src/planted.tsx", "export const A = () => <p>Go on</p>;", /catalogue/],
    [
      "words that are read out",
      "apps/web/src/planted.tsx",
      'export const A = () => <p title="Go" />;',
      /catalogue/,
    ],
    [
      "words chosen",
      "apps/web/src/planted.tsx",
      'export const A = () => <p>{1 ? "on" : 2}</p>;',
      /catalogue/,
    ],
    ["a file too long to read", "apps/web/src/planted.ts", "//\n".repeat(401), /at most 400/],
  ];
  it.each(planted)("%s", (_what, path, text, says) => {
    expect(saysOf(path, text)).toEqual([expect.stringMatching(says)]);
  });
});

describe("house rules let pass", () => {
  it("exact functions, own names and properties that look like the world's", () => {
    const text =
      "export const f = (document: { Date: number }) => Math.sqrt(document.Date) + Math.max(1, 2);";
    expect(saysOf("core/src/fit/planted.ts", text)).toEqual([]);
  });
  it("one program and plain words", () => {
    const text =
      '{ "scripts": { "a": "node scripts/a.mjs --to x", "b": "biome check --error-on-warnings" } }';
    expect(saysOf("package.json", text)).toEqual([]);
  });
  it("figures, units and names of classes on a screen, and words out of the catalogue", () => {
    const text =
      'export const A = ({ words }) => <p className="quiet go" title={words.go}>{words.on}: {3} mm</p>;';
    expect(saysOf("apps/web/src/planted.tsx", text)).toEqual([]);
  });
  it("the clock in an app, a local address, a test's own console", () => {
    expect(saysOf("apps/cli/src/planted.ts", 'new Date(); fetch("http://127.0.0.1:80");')).toEqual([]);
    expect(saysOf("core/src/fit/planted.test.ts", "console.log(Math.sin(1));")).toEqual([]);
  });
});

describe("names of files", () => {
  it.each(["docs/con.md", "docs/LPT1", "a:b.ts", "what?.md", "docs/trailing.", "blank ", "aux/b.ts"])(
    "%s is refused",
    (path) => {
      expect(unportableNames([path])).toHaveLength(1);
    },
  );
  it("two that differ only by case, by an accent's way of writing, or in a folder, are refused", () => {
    expect(unportableNames(["docs/A.md", "docs/a.md"])).toHaveLength(1);
    expect(unportableNames(["caf\u00e9.md", "cafe\u0301.md"])).toHaveLength(1);
    expect(unportableNames(["Docs/a.md", "docs/b.md"])).toHaveLength(1);
  });
  it("names like those, and files that lie in one folder, pass", () => {
    expect(
      unportableNames(["docs/console.md", "docs/a.md", "docs/b.md", ".gitattributes", "lpt.ts"]),
    ).toEqual([]);
  });
});

describe("licences and reasons", () => {
  it("judges expressions", () => {
    expect(isAllowed("a", "MIT")).toBe(true);
    expect(isAllowed("a", "(GPL-3.0 OR MIT)")).toBe(true);
    expect(isAllowed("a", "MIT AND GPL-3.0")).toBe(false);
    expect(isAllowed("a", "LGPL-3.0-or-later")).toBe(false);
    expect(isAllowed("a", "MPL-2.0")).toBe(false);
    expect(isAllowed("axe-core", "MPL-2.0")).toBe(true);
    expect(isAllowed("lightningcss-linux-x64-gnu", "MPL-2.0")).toBe(true);
    expect(mayBeShipped("MPL-2.0")).toBe(false);
    expect(mayBeShipped("OFL-1.1")).toBe(true);
  });
  it("asks for a line for each package", () => {
    expect(withoutReason(["zod", "left"], "# Why\n\n- `zod` describes a case.\n")).toEqual(["left"]);
  });
});
