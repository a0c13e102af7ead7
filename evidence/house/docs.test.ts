import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { projectPaths, root } from "./sources.ts";

const pages = projectPaths().filter((path) => path.endsWith(".md"));
const read = (path: string): string => readFileSync(join(root, path), "utf8");

/** Paths of this repository written in a page, as `core/src/...`. */
const placeOf = /`((?:core|bridges|apps|evidence|examples|scripts|docs)\/[^`\s*<>]+)`/g;
const linkOf = /\]\((?!https?:|mailto:|#)([^)#\s]+)(?:#[^)]*)?\)/g;

describe("every page", () => {
  it.each(pages)("%s names only files that are there", (page) => {
    const text = read(page);
    const named = [...text.matchAll(placeOf)].map((match) => match[1] ?? "");
    const linked = [...text.matchAll(linkOf)].map((match) => join(dirname(page), match[1] ?? ""));
    expect([...named, ...linked].filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });
});

describe("one reading's way", () => {
  const walk = [...read("docs/explanation/one-reading.md").matchAll(/`([a-z]+\/[^`]+\.ts)` `([^`]+)`/g)];
  it("passes all rooms in their order", () => {
    const rooms = [
      "apps",
      "records",
      "survey",
      "shape",
      "reach",
      "fit",
      "answer",
      "judge",
      "report",
      "bridges",
    ];
    const seen = walk.map(([, path = ""]) =>
      rooms.find((room) => path.startsWith(room) || path.includes(`src/${room}`)),
    );
    for (const room of rooms) expect(seen).toContain(room);
    expect(walk.length).toBeGreaterThan(20);
  });
  it.each(walk.map(([, path = "", name = ""]) => [path, name]))("%s holds %s", (path, name) => {
    expect(read(path)).toContain(name);
  });
});
