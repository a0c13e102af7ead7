import { rowsIn } from "@treewright/core/survey/recorded/rows-in.ts";
import { describe, expect, it } from "vitest";

/* What this cannot see: whether a table's horse is one that is here under another name. */
const DAY = "2031-04-12";
const taken = (text: string, here: Parameters<typeof rowsIn>[1] = []) => {
  const read = rowsIn(text, here, DAY);
  if (!read.ok) throw new Error(`${read.where}: ${read.read}`);
  return read;
};

describe("a table of horses and owners", () => {
  it("becomes a visit a row, in the words of the case", () => {
    const { rows, notTaken } = taken(
      "\ufeffPferd;Besitzer;Stall;Tag;Telefon\nCurlew;Ottoline Quarrender;Low Byre;2031-05-01;1\n",
    );
    expect(notTaken).toEqual(["Telefon"]);
    expect(rows).toHaveLength(1);
    expect(rows[0]?.refused).toBeUndefined();
    expect(rows[0]?.statements).toEqual([
      { at: "horses[0].name", value: "Curlew" },
      { at: "visit.owner", value: "Ottoline Quarrender" },
      { at: "visit.place", value: "Low Byre" },
      { at: "visit.date", value: "2031-05-01" },
    ]);
  });
  it("takes the caller's day where a row has none", () => {
    expect(taken("horse\nCurlew").rows[0]?.statements[0]).toEqual({ at: "visit.date", value: DAY });
  });
  it("takes back what our own tables defused", () => {
    const { rows } = taken("horse,owner\nCurlew,'=Sum\n");
    expect(rows[0]?.reads.owner).toBe("=Sum");
  });
  it.each([
    ["no horse", "horse,owner\n,Ann", "no horse"],
    ["a name too long", `horse\n${"x".repeat(121)}`, "xxx"],
    ["a day that is none", "horse,day\nCurlew,12.4.2031", "12.4.2031"],
    ["more cells than columns", "horse\nCurlew,Ann", "2 cells"],
    ["one that is here already", "horse,yard\nAVOCET, low byre ", "here already"],
  ])("refuses a row with %s, and writes nothing of it", (_, text, says) => {
    const [row] = taken(text, [{ horse: "Avocet", yard: "Low Byre" }]).rows;
    expect(row?.refused?.read).toContain(says);
    expect(row?.refused?.where).toContain("row 2");
    expect(row?.statements).toEqual([]);
  });
  it("refuses the same horse twice in one table, the second time", () => {
    const { rows } = taken("horse,yard\nCurlew,A\nCurlew,B\ncurlew,a\n");
    expect(rows.map(({ refused }) => refused === undefined)).toEqual([true, true, false]);
  });
  it.each([
    ["no column of horses", "name,owner\nCurlew,Ann", "row 1"],
    ["one column twice", "horse,Pferd\nCurlew,Curlew", "row 1"],
    ["a quote left open", 'horse\n"Curlew', "row 2"],
    ["nothing at all", "", "row 1"],
  ])("is refused whole with %s", (_, text, where) => {
    expect(rowsIn(text, [], DAY)).toMatchObject({ ok: false, where });
  });
});
