import { createHash } from "node:crypto";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { linesOf } from "@treewright/core/records/records-file.ts";
import { describe, expect, it } from "vitest";
import { Device } from "../records/written.ts";
import { folderWith, innards, treewright, wideLines } from "./run-treewright.ts";

const picture = new Uint8Array([255, 216, 255, 1, 2, 3]);
const hash = createHash("sha256").update(picture).digest("hex");

function exported(change: (lines: string[]) => string[] = (lines) => lines, photo = picture): string {
  const device = new Device(1);
  for (const n of [1, 2, 3]) device.state("a", n);
  const photos = [{ hash, type: "image/jpeg", bytes: picture.length } as const];
  const lines = change([...linesOf({ people: [], photos, entries: device.entries })]);
  const folder = folderWith({ "records.jsonl": `${lines.join("\n")}\n` });
  mkdirSync(join(folder, "photos"));
  writeFileSync(join(folder, "photos", `${hash}.jpg`), photo);
  return join(folder, "records.jsonl");
}

describe("verify", () => {
  it("R19 says that whole records are whole", () => {
    const ran = treewright(["verify", exported()]);
    expect(ran).toMatchObject({ code: 0, err: "" });
    expect(ran.out).toContain("3 entries about 1 subjects, 1 photos.");
    expect(ran.out).toContain("Whole: nothing was changed");
  });
  it("R19 names the entry that was changed, and the photo", () => {
    const changed = exported((lines) => lines.map((line) => line.replace('"value":2', '"value":20')));
    const ran = treewright(["verify", changed]);
    expect(ran.code).toBe(1);
    expect(ran.out).toMatch(/NOT WHOLE:\nentry [0-9a-f]{12} \(stated, 2031-04-12T09:00:00.000Z\)/);
    expect(wideLines(ran)).toEqual([]);
    const otherPhoto = treewright(["verify", exported(undefined, new Uint8Array([1]))]);
    expect(otherPhoto.code).toBe(1);
    expect(otherPhoto.out.replace(/\s+/g, " ")).toContain("its bytes are not those that were recorded");
  });
  it("R20 refuses what is cut short, and what is no such file", () => {
    const cut = treewright(["verify", exported((lines) => lines.slice(0, -1))]);
    expect(cut.code).toBe(1);
    expect(cut.err).toContain("cut short");
    for (const content of ["", "{}", "no JSON\n\n\n", "\u0000\u0001"]) {
      const ran = treewright(["verify", join(folderWith({ "x.jsonl": content }), "x.jsonl")]);
      expect(ran.code).toBe(1);
      expect(ran.out + ran.err).not.toMatch(innards);
    }
    expect(treewright(["verify", "nowhere.jsonl"]).code).toBe(3);
  });
});
