import { csvHead, readCsv } from "@treewright/core/engine/csv.ts";
import { READING_COLUMNS, VISIT_COLUMNS } from "@treewright/core/report/copy/tables.ts";
import { describe, expect, it } from "vitest";
import { HOSTILE, OTHER, recordsWith, SUBJECT, textsOf } from "./told.ts";

/* What this cannot see: how a spreadsheet shows a table. */
const tablesFor = (text: string) =>
  new Map([...textsOf(recordsWith(text))].filter(([path]) => path.endsWith(".csv")));

/** Cells by the names of their columns. The reader's own limit on a cell is below what may be recorded: so no long text here. */
function rowsOf(content = ""): readonly Record<string, string>[] {
  const read = readCsv(content);
  if (!read.ok) throw new Error(`${read.where}: ${read.read}`);
  const [names = [], ...rows] = read.rows;
  return rows.map((row) => Object.fromEntries(names.map((name, at) => [name, row[at] ?? ""])));
}

describe("the tables of a copy", () => {
  it("tell each visit, the latest day first", () => {
    const rows = rowsOf(tablesFor("Avocet").get("tables/visits.csv"));
    expect(rows).toHaveLength(2);
    expect(rows.find(({ visit }) => visit === OTHER)).toMatchObject({
      day: "2031-04-13",
      horse: "Curlew",
      // Two said different things: neither is told as if it stood.
      yard: "",
      owner: "",
      photos: "1",
    });
    expect(rows.find(({ visit }) => visit === SUBJECT)).toMatchObject({ owner: "Avocet", done: "Avocet" });
  });
  it("tell each reading as typed: below zero, disputed, erased", () => {
    const content = tablesFor("Avocet").get("tables/readings.csv");
    const own = rowsOf(content).filter(({ visit }) => visit === OTHER);
    const at = (place: string) => own.filter((row) => row.place === place);
    expect(at("saddle.head.spreadTips")[0]).toMatchObject({
      value: "-3.5",
      unit: "mm",
      part: "Head and points",
    });
    expect(at("visit.groundSlope")[0]).toMatchObject({ value: "-3 deg", state: "stands" });
    expect(content).toContain('"-3.5"');
    expect(content).toContain('"\'-3 deg"');
    expect(
      at("visit.place")
        .map(({ value }) => value)
        .sort(),
    ).toEqual(["High Byre", "Low Byre"]);
    expect(at("visit.place").every(({ state }) => state === "disputed")).toBe(true);
    expect(at("visit.owner")[0]).toMatchObject({ value: "", state: "erased" });
    expect(at("visit.owner")[0]?.said_at).toBe("2031-04-12T09:00:00.000Z");
  });
  it("tell each name that is held, with its visits", () => {
    expect(rowsOf(tablesFor("Avocet").get("tables/people.csv"))).toMatchObject([
      { is: "owner", name: "Avocet", visits: SUBJECT },
    ]);
  });
  it.each(HOSTILE.map((text) => [text.slice(0, 40), text]))("hold %j as text and nothing else", (_, text) => {
    for (const content of tablesFor(text).values())
      for (const cell of content.matchAll(/"((?:[^"]|"")*)"/g))
        if (!/^-?\d+(\.\d+)?$/.test(cell[1] ?? ""))
          expect((cell[1] ?? "").slice(0, 60)).not.toMatch(
            /^[\s\u200b-\u200f\u202a-\u202e]*[=+\-@]|^[\t\r\n]/,
          );
  });
  it("are of as many cells in every row", () => {
    expect(csvHead(VISIT_COLUMNS.map(({ name }) => name))).not.toContain('""');
    expect(new Set(READING_COLUMNS.map(({ name }) => name)).size).toBe(READING_COLUMNS.length);
  });
});
