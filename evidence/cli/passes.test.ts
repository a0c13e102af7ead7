import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { innards, treewright, wideLines } from "./run-treewright.ts";

const at = (path: string) => fileURLToPath(new URL(`../../examples/${path}`, import.meta.url));
const job = at("jobs/09-opened-in-the-saddle.json");

describe("passes", () => {
  it("tells the first pass with its interval, for the bench alone", () => {
    const ran = treewright(["passes", at("cases/09-alter-in-the-saddle.json"), "--job", job]);
    expect(ran.err).not.toContain("No pass is told");
    expect(ran.code).toBe(0);
    expect(ran.out).toContain("For the bench alone");
    expect(ran.out).toMatch(/Pass 1: travel \d+\.\d mm/);
    expect(ran.out).toMatch(/90\s%\s+interval/);
    expect(ran.out).toMatch(/no\s+cause/);
    expect(wideLines(ran)).toEqual([]);
    expect(ran.out).not.toMatch(innards);
  });

  it("tells none where the case does not permit this press", () => {
    const ran = treewright(["passes", at("cases/12-not-my-press.json"), "--job", job]);
    expect(ran.code).not.toBe(0);
    expect(ran.err).toMatch(/does not permit/);
    expect(ran.out).not.toMatch(/travel/);
  });

  it("wants to know which job", () => {
    expect(treewright(["passes", at("cases/09-alter-in-the-saddle.json")]).err).toContain("--job FILE");
  });
});
