import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "../house/sources.ts";

const page = readFileSync(join(root, "docs/reference/records.md"), "utf8");
const rules = [...page.matchAll(/^- \*\*(R\d+)\*\*/gm)].map(([, id = ""]) => id);
const folder = join(root, "evidence/records");
const titles = readdirSync(folder)
  .filter((name) => name.endsWith(".test.ts") && name !== "specified.test.ts")
  .flatMap((name) => [
    ...readFileSync(join(folder, name), "utf8").matchAll(/\bit(?:\.each\([^)]*\))?\("([^"]+)"/g),
  ])
  .map(([, title = ""]) => title);
const named = new Set(titles.flatMap((title) => title.match(/\bR\d+\b/g) ?? []));

describe("the specification", () => {
  it("numbers its rules without a gap", () => {
    expect(rules).toEqual(rules.map((_, at) => `R${at + 1}`));
    expect(rules.length).toBeGreaterThan(15);
  });
  it.each(rules)("%s stands in the title of a test", (id) => expect(named).toContain(id));
  it("no test names a rule that is not there", () => {
    expect([...named].filter((id) => !rules.includes(id))).toEqual([]);
  });
});
