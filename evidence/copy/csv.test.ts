import { CSV_LIMITS, csvHead, csvRow, defused, readCsv, undefused } from "@treewright/core/engine/csv.ts";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

/* What this cannot see: what a spreadsheet of tomorrow takes for a formula. */
const SEED = 20310412;
console.log(`seed ${SEED}`);

const rowsOf = (text: string) => {
  const read = readCsv(text);
  if (!read.ok) throw new Error(`${read.where}: ${read.read}`);
  return read.rows;
};

describe("a table read", () => {
  it("is what the examples of RFC 4180, section 2, say", () => {
    expect(rowsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n")).toEqual([
      ["aaa", "bbb", "ccc"],
      ["zzz", "yyy", "xxx"],
    ]);
    expect(rowsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx")).toHaveLength(2);
    expect(rowsOf('"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx')[0]).toEqual(["aaa", "b\r\nbb", "ccc"]);
    expect(rowsOf('"aaa","b""bb","ccc"')).toEqual([["aaa", 'b"bb', "ccc"]]);
  });
  it("takes ; and tab, the mark in front, bare line ends, empty lines and empty cells", () => {
    expect(rowsOf('\ufeffa;"b, c"\n\n1;\r2;3')).toEqual([
      ["a", "b, c"],
      ["1", ""],
      ["2", "3"],
    ]);
    expect(rowsOf("a\tb\n1\t2")[1]).toEqual(["1", "2"]);
    // The separator of the first line counts, and not inside quotes.
    expect(rowsOf('"a;b;c",d\n1,2')[0]).toEqual(["a;b;c", "d"]);
  });
  it.each([
    ["a quote left open", 'a,b\n"c,d', "row 2", "a quote that is not closed"],
    ["signs behind a quote", '"a"b,c', "row 1", "behind a closing quote"],
    ["too many cells", `a${",".repeat(CSV_LIMITS.cells)}`, "row 1", "cells"],
    ["a cell too long", `a,${"x".repeat(CSV_LIMITS.lettersInCell + 1)}`, "row 1", "letters in one cell"],
    ["too many rows", "a\n".repeat(CSV_LIMITS.rows + 1), "the whole table", "rows"],
    ["too many letters", "a".repeat(CSV_LIMITS.letters + 1), "the whole table", "letters"],
  ])("refuses %s", (_, text, where, says) => {
    const read = readCsv(text);
    expect(read).toMatchObject({ ok: false, where });
    expect(read.ok ? "" : read.read).toContain(says);
  });
});

describe("a table written", () => {
  const hostile = fc.oneof(
    fc.string({ unit: "binary" }),
    fc.stringMatching(/^['\s]{0,3}[=+\-@\t\r\n'";,]{0,3}[a-z0-9(]{0,6}$/),
    fc.integer().map(String),
    fc.double({ noNaN: true, noDefaultInfinity: true }).map(String),
  );
  it("is read back cell for cell, whatever is in it", () => {
    // Two cells at least: a row of one empty cell is an empty line to any reader.
    const rows = fc.array(fc.array(hostile, { minLength: 2, maxLength: 5 }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(rows, (all) => {
        const [names = [], ...others] = all;
        expect(rowsOf(csvHead(names) + others.map(csvRow).join(""))).toEqual(all);
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });
  it("begins no cell as a formula, but for plain numbers", () => {
    fc.assert(
      fc.property(hostile, (text) => {
        const safe = defused(text);
        expect(undefused(safe)).toBe(text);
        if (/^-?\d+(\.\d+)?$/.test(text)) expect(safe).toBe(text);
        else
          expect(safe).not.toMatch(
            /^[\s\u200b-\u200f\u202a-\u202e]*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r\n]/,
          );
      }),
      { seed: SEED, numRuns: 5000 },
    );
  });
  it.each([
    ['=HYPERLINK("http://h/")', '\'=HYPERLINK("http://h/")'],
    ["-3 mm", "'-3 mm"],
    ["-3,5", "'-3,5"],
    ["-3.5", "-3.5"],
    ["-2+3", "'-2+3"],
    ["\u202e=1+1", "'\u202e=1+1"],
    ["\uff1d1", "'\uff1d1"],
    ["'=1", "''=1"],
    ["'tis", "'tis"],
    ["Curlew", "Curlew"],
  ])("writes %j as %j", (text, cell) => {
    expect(defused(text)).toBe(cell);
    expect(undefused(cell)).toBe(text);
  });
  it("has every cell in quotes, lines ended by CR LF, and the mark of UTF-8", () => {
    expect(csvHead(["a", "c"]) + csvRow(["d", -3.5]) + csvRow(['b"', undefined])).toBe(
      '\ufeff"a","c"\r\n"d","-3.5"\r\n"b""",""\r\n',
    );
  });
});
