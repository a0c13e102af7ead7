import { describe, expect, it } from "vitest";
import { commands } from "../../apps/cli/src/commands.ts";
import { treewright, wideLines } from "./run-treewright.ts";

describe("help", () => {
  it("lists every command and every exit code", () => {
    const ran = treewright(["help"]);
    expect(ran.code).toBe(0);
    for (const command of commands) expect(ran.out).toContain(`\n  ${command.name} `);
    for (const code of [0, 1, 2, 3, 4, 5]) expect(ran.out).toMatch(new RegExp(`^  ${code}   `, "m"));
    expect(ran.out).toContain("go to a vet before any fit is judged");
    expect(wideLines(ran)).toEqual([]);
  });

  it.each(commands.map((one) => one.name))("of %s has an example and stays within 80 columns", (name) => {
    const ran = treewright([name, "--help"]);
    expect(ran.code).toBe(0);
    expect(ran.out).toContain(`  treewright ${name}`);
    expect(ran.out).toContain("Examples:");
    expect(wideLines(ran)).toEqual([]);
  });
});

describe("wrong use", () => {
  const wrong: readonly (readonly string[])[] = [
    [],
    ["nothing-of-that-name"],
    ["check"],
    ["check", "a.json", "b.json"],
    ["check", "--no-such-option", "a.json"],
    ["schema", "too-much"],
    ["help", "nothing-of-that-name"],
  ];
  it.each(wrong.map((words) => [words]))("%j is told so, with code 2", (words) => {
    const ran = treewright(words);
    expect(ran.code).toBe(2);
    expect(ran.out + ran.err).toMatch(/treewright|There is no command/);
    expect(wideLines(ran)).toEqual([]);
  });
});

describe("schema", () => {
  it("is JSON Schema that names the case's parts", () => {
    const ran = treewright(["schema"]);
    expect(ran.code).toBe(0);
    expect(Object.keys(JSON.parse(ran.out).properties)).toEqual(
      expect.arrayContaining(["saddle", "horses", "platesAtHand"]),
    );
  });
});
