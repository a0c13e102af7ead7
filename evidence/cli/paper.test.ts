import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { folderWith, treewright, wideLines } from "./run-treewright.ts";

const examples = fileURLToPath(new URL("../../examples/cases", import.meta.url));
const head = join(examples, "09-alter-in-the-saddle.json");
const isPdf = (path: string): boolean => readFileSync(path, "latin1").startsWith("%PDF-");

describe("template", () => {
  it("writes the wanted head as PDF, and as SVG and DXF for a cutter", () => {
    const folder = folderWith({});
    const pdf = treewright(["template", head, "--out", join(folder, "head.pdf")]);
    expect(pdf.code).toBe(0);
    expect(isPdf(join(folder, "head.pdf"))).toBe(true);
    const svg = treewright(["template", head, "--out", join(folder, "deep", "head.svg")]);
    expect(svg.code).toBe(0);
    expect(readFileSync(join(folder, "deep", "head.svg"), "utf8")).toMatch(/ width="\d+mm".*<g id="cut">/s);
    const dxf = treewright([
      "template",
      head,
      "--face",
      "inside",
      "--half",
      "--out",
      join(folder, "head.dxf"),
    ]);
    expect(dxf.code).toBe(0);
    expect(readFileSync(join(folder, "head.dxf"), "latin1")).toContain("AC1015");
    expect(wideLines(pdf)).toEqual([]);
  });

  it("makes none for a horse that wants the vet first, and leaves no file", () => {
    const folder = folderWith({});
    const ran = treewright([
      "template",
      join(examples, "01-sore-to-the-touch.json"),
      "--out",
      join(folder, "head.pdf"),
    ]);
    expect(ran.code).toBe(1);
    expect(ran.err).toContain("No template was made");
    expect(readdirSync(folder)).toEqual([]);
  });

  it("asks which horse where there are two, and for a name it can write", () => {
    expect(treewright(["template", join(examples, "16-two-ponies-loose-bar.json")]).code).toBe(2);
    expect(treewright(["template", head, "--out", "head.docx"]).code).toBe(2);
    expect(treewright(["template", head, "--as", "dxf", "--out", "head.svg"]).code).toBe(2);
    expect(treewright(["template", head, "--face", "left"]).code).toBe(2);
    expect(treewright(["template", head, "--out", "/dev/null/head.pdf"]).code).toBe(3);
  });
});

describe("answer --sheets", () => {
  it("writes letter and sheet for each horse, a template only where there is one", () => {
    const folder = join(folderWith({}), "sheets");
    const ran = treewright([
      "answer",
      join(examples, "01-sore-to-the-touch.json"),
      "--sheets",
      folder,
      "--json",
    ]);
    expect(ran.code).toBe(0);
    const names = ["letter", "sheet"].map((kind) => `01-sore-to-the-touch-horse-1-${kind}.pdf`);
    expect(readdirSync(folder).sort()).toEqual(names);
    for (const name of names) expect(isPdf(join(folder, name))).toBe(true);
    expect(ran.out.trim().split("\n")).toHaveLength(1);
  });

  it("says when it cannot write, and leaves nothing half written", () => {
    const ran = treewright([
      "answer",
      join(examples, "01-sore-to-the-touch.json"),
      "--sheets",
      "/dev/null/sheets",
    ]);
    expect(ran.code).toBe(3);
    expect(ran.err).toContain("Could not write");
    expect(existsSync("/dev/null/sheets")).toBe(false);
  });
});
