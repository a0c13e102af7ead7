import { describe, expect, it } from "vitest";
import { treewright, wideLines } from "./run-treewright.ts";

describe("explain", () => {
  it("gives a rule with its limits, readings and source", () => {
    const ran = treewright(["explain", "clearance-rider-up"]);
    expect(ran.code).toBe(0);
    for (const part of ["inside: 40 to 75 mm", "readings:", "source: published"])
      expect(ran.out).toContain(part);
    expect(wideLines(ran)).toEqual([]);
  });

  it("lists every rule, and each of them has a source", () => {
    const ran = treewright(["explain"]);
    const ids = ran.out.trim().split("\n");
    expect(ids.length).toBeGreaterThan(40);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of [ids[0], ids.at(-1)])
      expect(treewright(["explain", id ?? ""]).out).toContain("source: ");
  });

  it("says when there is no such rule", () => {
    const ran = treewright(["explain", "no-such-rule"]);
    expect(ran.code).toBe(2);
    expect(ran.err).toContain('There is no rule "no-such-rule"');
  });
});
