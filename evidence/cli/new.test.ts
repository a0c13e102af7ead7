import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { questions } from "../../core/src/survey/questions.ts";
import { folderWith, fullCase, innards, treewright, wideLines } from "./run-treewright.ts";

const typed = (...lines: readonly string[]): string => `${lines.join("\n")}\n`;
const read = (path: string) => JSON.parse(readFileSync(path, "utf8"));

describe("new", () => {
  it("asks, writes every answer, leaves, and goes on where it was left", () => {
    const path = join(folderWith({}), "first.json");
    const left = treewright(["new", path], typed("2", "2031-04-12", "Upper Lathe", "leave"));
    expect(left.code).toBe(5);
    expect(read(path)).toMatchObject({ visit: { date: "2031-04-12", place: "Upper Lathe" } });
    expect(read(path).horses).toHaveLength(2);

    const [, place, next] = questions(2);
    const again = treewright(["new", path], typed("Orla Fenn", "leave"));
    const said = again.out.replace(/\s+/g, " ");
    expect(said).toContain(next?.asks);
    expect(said).not.toContain(place?.asks);
    expect(read(path).visit).toMatchObject({ place: "Upper Lathe", owner: "Orla Fenn" });
    expect(wideLines(again)).toEqual([]);
  });

  it("keeps what was typed when the input ends in the middle", () => {
    const path = join(folderWith({}), "first.json");
    expect(treewright(["new", path], "1\n2031-04-12\nUpper Lathe").code).toBe(5);
    expect(read(path).visit.place).toBe("Upper Lathe");
  });

  it("asks again after a wrong answer, and says what is allowed", () => {
    const path = join(folderWith({}), "first.json");
    const ran = treewright(["new", path], typed("none", "9", "1", "2031-02-30", "leave"));
    expect(ran.out.match(/How many horses/g)).toHaveLength(3);
    expect(ran.out).toContain('read: "2031-02-30"');
    expect(ran.out).toContain("a day that exists");
    expect(ran.out).not.toMatch(innards);
  });

  it("comes to its end with Enter alone, and the case can be checked", () => {
    const path = join(folderWith({}), "first.json");
    const ran = treewright(["new", path], "\n".repeat(questions(1).length + 2));
    expect(ran.code).toBe(0);
    expect(ran.out).toContain("That was the last question");
    expect(wideLines(ran)).toEqual([]);
    expect(treewright(["check", path]).code).toBe(0);
  });

  it("goes back, and to the next section", () => {
    const path = join(folderWith({}), "first.json");
    const ran = treewright(["new", path], typed("1", "", "back", "next", "leave"));
    expect(ran.out.match(/Day of the visit/g)).toHaveLength(2);
    expect(ran.out).toContain("WHAT'S BEEN GOING ON");
  });

  it("never puts the same question twice in the same words", () => {
    const path = join(folderWith({}), "first.json");
    const said = treewright(["new", path], `2\n${"\n".repeat(questions(2).length + 2)}`).out.replace(
      /\s+/g,
      " ",
    );
    const asked = [...said.matchAll(/\d+ of \d+ (.*?) \[/g)].map((match) => match[1]);
    expect(asked.length).toBeGreaterThan(300);
    expect(asked.filter((words, at) => asked.indexOf(words) !== at)).toEqual([]);
  });

  it("takes up a full case and loses nothing of it", () => {
    const path = join(folderWith({}), "full.json");
    writeFileSync(path, readFileSync(fullCase));
    treewright(["new", path], typed("leave"));
    expect(read(path)).toEqual(read(fullCase));
  });

  it("touches no file that is not a case", () => {
    const path = join(folderWith({ "notes.json": "my notes" }), "notes.json");
    expect(treewright(["new", path], typed("1")).code).toBe(1);
    expect(readFileSync(path, "utf8")).toBe("my notes");
  });

  it("says when it cannot write", () => {
    const ran = treewright(["new", "/dev/null/first.json"], typed("1"));
    expect(ran.code).toBe(3);
    expect(ran.err).toContain("Could not write");
    expect(existsSync("/dev/null/first.json")).toBe(false);
  });
});
