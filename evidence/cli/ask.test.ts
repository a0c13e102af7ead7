import { ownerQuestions } from "@treewright/core/judge/owner/asks.ts";
import { describe, expect, it } from "vitest";
import { innards, treewright, wideLines } from "./run-treewright.ts";

const asked = ownerQuestions();
const typed = (answers: Readonly<Record<string, string>>): string =>
  asked.map(({ name }) => `${answers[name] ?? ""}\n`).join("");

describe("ask", () => {
  it("answers when nothing is known, and promises nothing", () => {
    const ran = treewright(["ask"], typed({}));
    expect(ran.code).toBe(0);
    expect(ran.out).toContain("Whom to see, in this order");
    expect(ran.out).toContain("promises nothing");
    expect(ran.out).not.toMatch(innards);
    expect(wideLines(ran)).toEqual([]);
  });

  it.each([
    ["uneven", "vet"],
    ["sore", "vet"],
    ["flinches", "vet"],
    ["crackOrWhiteLine", "STOP"],
    ["clicksOrMoves", "STOP"],
  ])("%s: yes leads to %s", (name, says) => {
    const ran = treewright(["ask"], typed({ [name]: "yes" }));
    expect(ran.code).toBe(0);
    expect(ran.out).toContain(says);
    expect(ran.out).not.toContain("Lay it on the bare back");
  });

  it("never gives an owner a figure to press or heat by", () => {
    for (const arch of ["wood", "polymer"]) {
      const ran = treewright(
        ["ask"],
        typed({ arch, metal: "plates", exchange: "plate", makerAllowsOwner: "y", youOwnIt: "yes" }),
      );
      expect(ran.out.slice(ran.out.lastIndexOf("  > "))).not.toMatch(/\d\s*(mm|kN|bar|°|degrees|kPa)/);
      expect(ran.out).not.toMatch(/\bsafe\b/);
    }
  });

  it("reads as told by an owner, not as looked at; no rule's name, no answer's id", () => {
    const good = Object.fromEntries(asked.map(({ name, words }) => [name, words.includes("no") ? "no" : ""]));
    const changeable = { arch: "polymer", metal: "bar", exchange: "plate", toldByMaker: "yes" };
    const yes = { makerAllowsOwner: "yes", ownedSinceNew: "yes", youOwnIt: "yes", underFiveYears: "yes" };
    const ran = treewright(["ask"], typed({ ...good, ...changeable, ...yes }));
    const told = ran.out.slice(ran.out.lastIndexOf("  > ")).replace(/\s+/g, " ");
    expect(told).toContain("nobody has touched the horse");
    expect(told).not.toMatch(/Hands, eyes|\b(horse|saddle|right|fit)-[a-z]+-|dont-know/);
    expect(told).not.toContain("Incidents not denied");
    expect(ran.out).toContain("don't know");
  });

  it("asks again after a word it does not know, and leaves without an answer", () => {
    const ran = treewright(["ask"], "steel girder\nleave\n");
    expect(ran.code).toBe(5);
    expect(ran.out).toContain('read: "steel girder"');
    expect(ran.err).toContain("nothing is answered");
  });
});
