import { execFileSync } from "node:child_process";
import { copyFileSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { projectPaths, root } from "./sources.ts";

// A repository of its own, so that neither this machine's own attributes nor a checkout without git make a difference.
const folder = mkdtempSync(join(tmpdir(), "treewright-attributes-"));
afterAll(() => rmSync(folder, { recursive: true }));
execFileSync("git", ["init", "--quiet", folder]);
copyFileSync(join(root, ".gitattributes"), join(folder, ".gitattributes"));

/** What git says of files: `-text` where it may change nothing, `text=auto` with an ending where it may. A name need not be there. */
function attributes(paths: readonly string[]): Map<string, string> {
  const args = ["check-attr", "--stdin", "-z", "text", "eol"];
  const said = execFileSync("git", args, { cwd: folder, encoding: "utf8", input: paths.join("\0") }).split(
    "\0",
  );
  const found = new Map<string, string>();
  for (let at = 0; at + 2 < said.length; at += 3)
    found.set(said[at] ?? "", `${found.get(said[at] ?? "") ?? ""}${said[at + 1]}=${said[at + 2]} `);
  return found;
}
const UNTOUCHED = "text=unset eol=lf ";
const ONE_ENDING = "text=auto eol=lf ";

describe("line endings", () => {
  it.each(["png", "jpg", "pdf", "woff", "woff2", "ttf", "otf", "wasm", "icc", "tgz", "zip"])(
    "of a .%s are none: git leaves it as it is",
    (ending) => {
      expect(attributes([`a.${ending}`]).get(`a.${ending}`)).toBe(UNTOUCHED);
    },
  );
  it.each(["ts", "tsx", "mjs", "json", "md", "css", "html", "svg", "dxf", "txt"])(
    "of a .%s are one",
    (ending) => {
      expect(attributes([`a.${ending}`]).get(`a.${ending}`)).toBe(ONE_ENDING);
    },
  );
  it("every file that is kept is of the kind that its ending says", () => {
    const paths = projectPaths();
    const said = attributes(paths);
    const isBinary = (path: string) => readFileSync(join(root, path)).includes(0);
    expect(paths.filter((path) => isBinary(path) !== (said.get(path) === UNTOUCHED))).toEqual([]);
    expect(
      paths.filter((path) => !isBinary(path) && readFileSync(join(root, path), "utf8").includes("\r")),
    ).toEqual([]);
  });
});
