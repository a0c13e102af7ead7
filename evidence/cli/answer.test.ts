import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { folderWith, fullCase, innards, treewright, wideLines } from "./run-treewright.ts";

const examples = fileURLToPath(new URL("../../examples/cases", import.meta.url));
const sore = readFileSync(join(examples, "01-sore-to-the-touch.json"), "utf8");
const halfEmpty = readFileSync(join(examples, "07-half-empty.json"), "utf8");
const ponies = readFileSync(join(examples, "16-two-ponies-loose-bar.json"), "utf8");
const lines = (out: string) =>
  out
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line));

describe("answer", () => {
  it("gives three answers with rule, source, next step and who, within 80 columns", () => {
    const ran = treewright(["answer", fullCase]);
    expect(ran.code).toBe(0);
    for (const part of [
      "Horse",
      "Saddle",
      "Work",
      "next:",
      "who:",
      "Today",
      "±",
      "common practice, no source",
    ]) {
      expect(ran.out).toContain(part);
    }
    expect(ran.out.replace(/\s+/g, " ")).toMatch(/Engine \S+, readings [0-9a-f]{12}, 1000 draws from seed 1/);
    expect(wideLines(ran)).toEqual([]);
    expect(ran.out).not.toMatch(innards);
  });

  it("shows neither setting nor pressure nor fit for a horse that is sore to the touch", () => {
    const ran = treewright(["answer", join(examples, "01-sore-to-the-touch.json")]);
    expect(ran.code).toBe(0);
    expect(ran.out).not.toMatch(/kPa|setting looked at|tree face|inside the tips/);
    const [line] = lines(treewright(["answer", "--json", join(examples, "01-sore-to-the-touch.json")]).out);
    expect(line).toMatchObject({
      case: "01-sore-to-the-touch",
      horse: "vet-before-altering",
      work: "not-now",
      setting: null,
    });
  });

  it("puts stop signs before everything else", () => {
    const path = join(folderWith({ "ponies.json": ponies }), "ponies.json");
    const ran = treewright(["answer", path, "--horse", "1"]);
    const stop = ran.out.indexOf("STOP");
    expect(stop).toBeGreaterThan(0);
    expect(stop).toBeLessThan(ran.out.indexOf("Horse "));
  });
});

describe("answer in words", () => {
  it("nobody is told to ride in a saddle that is kept as evidence", () => {
    const ran = treewright(["answer", join(examples, "14-in-dispute.json")]);
    expect(ran.out).toContain("No: not in this saddle, which is kept as it was found.");
    expect(ran.out).not.toContain("No reason was seen today not to ride in this saddle");
  });

  it("a saddle that tips in the calculation is told in words, and not called right", () => {
    const right = JSON.parse(readFileSync(join(examples, "08-nothing-to-do.json"), "utf8"));
    for (const side of ["near", "off"]) right.saddle.bearing.rear[side].underStraightEdge = 140;
    const path = join(folderWith({ "tips.json": JSON.stringify(right) }), "tips.json");
    const ran = treewright(["answer", path]);
    const said = ran.out.replace(/\s+/g, " ");
    expect(said).toContain("it tips forward over its points");
    expect(said).toContain("In the calculation the saddle does not come to rest");
    expect(said).not.toContain("tips-front");
    expect(said).not.toContain("Nothing to do to this saddle");
  });
});

describe("answer of a folder", () => {
  it("prints one line for each case and horse, in the order of names, and tells what is wrong beside it", () => {
    const folder = folderWith({ "b.json": sore, "a.json": halfEmpty, "c.json": "{}" });
    const ran = treewright(["answer", folder, "--json"]);
    expect(ran.code).toBe(1);
    expect(lines(ran.out).map((line) => line.case)).toEqual(["a", "b"]);
    expect(Object.keys(lines(ran.out)[0]).slice(0, 5)).toEqual(["case", "horse", "saddle", "work", "also"]);
    expect(ran.err).toContain("c.json");
  });

  it("counts horses from one, and refuses one that is not there", () => {
    const folder = folderWith({ "ponies.json": ponies });
    const ran = treewright(["answer", folder, "--json"]);
    expect(lines(ran.out).map((line) => line.horseIndex)).toEqual([0, 1]);
    const path = join(folder, "ponies.json");
    expect(lines(treewright(["answer", path, "--json", "--horse", "1"]).out)).toEqual(
      lines(ran.out).slice(0, 1),
    );
    for (const horse of ["3", "0", "two", "1.5"])
      expect(treewright(["answer", path, "--horse", horse]).code).toBe(2);
  });

  it("says the same twice", () => {
    const words = ["answer", fullCase, "--json"];
    expect(treewright(words).out).toBe(treewright(words).out);
  });

  it("gives no part of an answer for a case with a problem", () => {
    const path = join(
      folderWith({ "wrong.json": sore.replace('"version": 3', '"version": "two"') }),
      "wrong.json",
    );
    expect(treewright(["answer", path, "--json"])).toMatchObject({ code: 1, out: "" });
  });
});
