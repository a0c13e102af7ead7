import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { folderWith, innards, treewright, wideLines } from "./run-treewright.ts";

const at = (path: string) => fileURLToPath(new URL(`../../examples/${path}`, import.meta.url));
const changeable = at("cases/05-readings-in-inches.json");
const van = at("stock/plates-in-the-van.json");

describe("plates", () => {
  it("ranks those at hand with a stock's, and says of each why or why not", () => {
    const ran = treewright(["plates", changeable, "--stock", van]);
    expect(ran.code).toBe(0);
    expect(ran.out).toContain("1. stock 8");
    expect(ran.out).toMatch(/does not fit: different pitch of the holes/);
    expect(ran.out).toMatch(/not seen sound/);
    expect(ran.out).toMatch(/cannot\s+tell it from the first/);
    expect(wideLines(ran)).toEqual([]);
    expect(ran.out).not.toMatch(innards);
  });

  it("prints one line for another program", () => {
    const ran = treewright(["plates", changeable, "--json"]);
    const seen = JSON.parse(ran.out);
    expect(seen.plates.map(({ mounting }: { mounting: string }) => mounting)).toEqual([
      "same",
      "same",
      "differs",
    ]);
    expect(seen.ranked[0].id).toEqual({ list: "at-hand", index: 0 });
  });

  it("refuses a head that takes no plates, and a stock with a problem, by place", () => {
    const ran = treewright(["plates", at("cases/09-alter-in-the-saddle.json")]);
    expect([ran.code, ran.err]).toEqual([1, expect.stringContaining("takes no plates")]);
    const typed = JSON.parse(readFileSync(van, "utf8"));
    typed.plates[2].spread = 700;
    typed.plates[3].spraed = 1;
    const folder = folderWith({ "stock.json": JSON.stringify(typed), "other.json": "{}" });
    const wrong = treewright(["plates", changeable, "--stock", join(folder, "stock.json")]);
    expect(wrong.code).toBe(1);
    expect(wrong.err).toContain("stock.plates[2].spread");
    expect(wrong.err.replace(/\s+/g, " ")).toContain('the name "spread" (did you mean that?)');
    expect(treewright(["sizes", join(folder, "other.json")]).err).toContain("treewright-stock");
    expect(wideLines(wrong)).toEqual([]);
  });
});

describe("sizes", () => {
  it("says every word in mm and degrees at one level, and the level", () => {
    const ran = treewright(["sizes", van, "--level", "60"]);
    expect(ran.code).toBe(0);
    expect(ran.out).toContain("at 60 mm below the crown");
    expect(ran.out).toMatch(/10 degrees of included angle.* are 10 mm/s);
    expect(ran.out).toMatch(/holds\s+only\s+about\s+115\s+mm/);
    expect(ran.out).toContain("cannot tell them");
    expect(wideLines(ran)).toEqual([]);
    const low = JSON.parse(treewright(["sizes", van, "--json"]).out);
    expect(low.levelMm).toBe(84);
    expect(treewright(["sizes", van, "--level", "20"]).code).toBe(2);
  });

  it("its file's format is printed by schema", () => {
    expect(Object.keys(JSON.parse(treewright(["schema", "--stock"]).out).properties)).toContain("plates");
  });
});
