import { mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { folderWith, fullCase, innards, treewright, wideLines } from "./run-treewright.ts";

const good = readFileSync(fullCase, "utf8");

describe("check", () => {
  it("finds nothing wrong in a full case", () => {
    const ran = treewright(["check", fullCase]);
    expect(ran).toMatchObject({ code: 0, err: "" });
    expect(ran.out).toContain("good");
  });

  it("says where, what was read and what is allowed", () => {
    const folder = folderWith({ "wrong.json": good.replace('"depth": 95', '"depth": "950 mm"') });
    const ran = treewright(["check", join(folder, "wrong.json")]);
    expect(ran.code).toBe(1);
    expect(ran.err).toContain("saddle.head.depth");
    expect(ran.err).toContain('read: "950 mm"');
    expect(ran.err).toMatch(/allowed: .*40.*180/);
    expect(wideLines(ran)).toEqual([]);
  });

  it("checks a folder whole, the good beside the wrong", () => {
    const folder = folderWith({ "a.json": "{}", "b.json": good, "notes.txt": "no case" });
    const ran = treewright(["check", folder]);
    expect(ran.code).toBe(1);
    expect(ran.err).toContain("a.json");
    expect(ran.out.replace(/\s/g, "")).toContain("b.json:good");
    expect(ran.out + ran.err).not.toContain("notes.txt");
  });
});

describe("a file that is no case", () => {
  const hostile: readonly (readonly [what: string, content: string | Uint8Array])[] = [
    ["nothing", ""],
    ["no JSON", "spread 205"],
    ["JSON that ends early", good.slice(0, 2000)],
    ["bytes that are no text", Uint8Array.from({ length: 5000 }, (_, at) => (at * 197) % 256)],
    ["a list", "[1, 2, 3]"],
    ["null", "null"],
    ["a hundred thousand brackets", "[".repeat(100_000)],
    ["a name of the language", `{ "__proto__": { "format": "treewright-case" }, "constructor": 1 }`],
    ["huge numbers", good.replace('"depth": 95', '"depth": 1e999')],
    ["a number that is none", good.replace('"depth": 95', '"depth": NaN')],
    ["a negative depth", good.replace('"depth": 95', '"depth": -95')],
    ["inches taken for millimetres", good.replace('"depth": 95', '"depth": 3.75')],
    ["a newer version", good.replace('"version": 3', '"version": 3000')],
    ["control signs in a name", good.replace("treewright-case", "\\u0007\\u001b[31mcase")],
    ["three megabytes", `{ "title": "${"x".repeat(3_000_000)}" }`],
  ];
  it.each(hostile)("%s: code 1, a few plain lines", (_what, content) => {
    const ran = treewright(["check", join(folderWith({ "case.json": content }), "case.json")]);
    expect(ran.code).toBe(1);
    expect(ran.err).toMatch(/allowed/);
    expect(ran.err).not.toMatch(innards);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: that is what must not reach a terminal
    expect(ran.out + ran.err).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f]/);
    expect(wideLines(ran)).toEqual([]);
  });
});

describe("a path that cannot be read", () => {
  it("is told with code 3", () => {
    const folder = folderWith({});
    mkdirSync(join(folder, "empty"));
    for (const path of [join(folder, "none.json"), join(folder, "empty"), "/dev/zero", "/dev/null/x.json"]) {
      const ran = treewright(["check", path]);
      expect(ran.code).toBe(3);
      expect(ran.err).toContain("Could not read");
      expect(ran.err).not.toMatch(innards);
    }
  });
});
