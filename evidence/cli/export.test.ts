import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { linesOf } from "@treewright/core/records/records-file.ts";
import { describe, expect, it } from "vitest";
import { PHOTO, recordsWith } from "../copy/told.ts";
import { folderWith, treewright, wideLines } from "./run-treewright.ts";

/* The page and the tables themselves are held in `evidence/copy`. */
describe("export", () => {
  it("writes page, tables and the photos that are there into a folder", () => {
    const folder = folderWith({ "records.jsonl": `${[...linesOf(recordsWith("Avocet"))].join("\n")}\n` });
    mkdirSync(join(folder, "photos"));
    writeFileSync(join(folder, "photos", `${PHOTO.hash}.jpg`), "abc");
    const into = join(folder, "told");
    const ran = treewright(["export", join(folder, "records.jsonl"), "--into", into]);
    expect(ran).toMatchObject({ code: 0, err: "" });
    expect(ran.out.replace(/\s+/g, " ")).toContain("with 2 visits, and 1 of 1 photos");
    expect(wideLines(ran)).toEqual([]);
    expect(readdirSync(into).sort()).toEqual(["index.html", "photos", "tables"]);
    expect(readFileSync(join(into, "index.html"), "utf8")).toContain("Letters and sheets are not made");
    expect(readFileSync(join(into, "tables", "visits.csv"), "utf8")).toContain('"Avocet"');
    expect(readFileSync(join(into, "photos", `${PHOTO.hash}.jpg`), "utf8")).toBe("abc");
  });
  it("asks for a folder, and refuses what is no file of records", () => {
    expect(treewright(["export", "x.jsonl"]).code).toBe(2);
    const folder = folderWith({ "x.jsonl": "{}" });
    const ran = treewright(["export", join(folder, "x.jsonl"), "--into", join(folder, "told")]);
    expect(ran.code).toBe(1);
    expect(readdirSync(folder)).toEqual(["x.jsonl"]);
  });
});
