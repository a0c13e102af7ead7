import fc from "fast-check";
import { expect, test } from "vitest";
import { readCase } from "../../core/src/survey/read-case.ts";
import { takeTransponder, transponderFrame } from "../../core/src/survey/transponder.ts";
import { takeUeln } from "../../core/src/survey/ueln.ts";
import { COUNTRY_FIGURES, countryLetters } from "../../core/src/terms/countries.ts";
import { propertySeed } from "../number/seed.ts";
import { caseText } from "./horse-with.ts";

const seed = propertySeed("identity");
const figures = (n: number, least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((value) => String(value).padStart(n, "0"));
const code = figures(3, 1, 998);
const individual = figures(12, 0, 2 ** 38 - 1);

/** A second way back: 64 characters of nought and one, cut where the standard cuts them. */
function unframed(hex: string): string {
  const bits = [...hex].map((sign) => Number.parseInt(sign, 16).toString(2).padStart(4, "0")).join("");
  expect([bits.length, bits[0], bits.slice(1, 16)]).toEqual([64, "1", "000000000000000"]);
  const value = (from: number, to: number) => Number.parseInt(bits.slice(from, to), 2);
  return `${String(value(16, 26)).padStart(3, "0")}${String(value(26, 64)).padStart(12, "0")}`;
}

test("every number of a chip comes back out of its 64 bits, however it was typed", () => {
  fc.assert(
    fc.property(code, individual, fc.constantFrom("", " ", ".", "-"), (front, back, sign) => {
      const chip = takeTransponder(`${front}${sign}${back.slice(0, 4)}${sign}${back.slice(4)}`);
      if (!chip.ok) throw new Error(chip.allowed);
      expect(unframed(transponderFrame(chip.transponder))).toBe(front + back);
    }),
    { seed },
  );
});

test("a number for life is 15 signs and stays what it is when it is read again", () => {
  const signs = (n: number, most: number) =>
    fc.string({ unit: fc.constantFrom(..."0123456789ABCDEFGHJK"), minLength: n, maxLength: most });
  fc.assert(
    fc.property(figures(3, 1, 999), signs(3, 3), signs(1, 9), (front, base, own) => {
      const found = takeUeln(`${front}${base.toLowerCase()} ${own}`);
      if (!found.ok) throw new Error(found.allowed);
      expect(found.ueln).toBe(front + base + "0".repeat(9 - own.length) + own);
      expect(takeUeln(found.ueln)).toEqual(found);
    }),
    { seed },
  );
});

test("countries agree with the locale data of this engine, each with one code", () => {
  const letters = COUNTRY_FIGURES.map((figures) => new Intl.Locale(`und-${figures}`).region);
  expect(letters).toEqual(COUNTRY_FIGURES.map(countryLetters));
  expect(new Set(letters).size).toBe(letters.length);
  const known = Array.from(
    { length: 899 },
    (_, i) => new Intl.Locale(`und-${String(i + 1).padStart(3, "0")}`).region,
  );
  expect(new Set(known.filter((region) => region !== undefined && /^[A-Z]{2}$/.test(region)))).toEqual(
    new Set(letters),
  );
});

test.each([
  ["transponder", "999 000000012345", /begins with 999/],
  ["transponder", "276 999999999999", /274877906943/],
  ["transponder", "27600001234", /15 figures/],
  ["ueln", "276020(1", /figures and letters/],
  ["ueln", "276020", /15 signs/],
])("%s %s is refused with where, what and what is allowed", (field, typed, allowed) => {
  const read = readCase(caseText({ identity: { [field]: typed } }));
  if (read.ok) throw new Error("read");
  expect(read.problems).toHaveLength(1);
  expect(read.problems[0]?.where).toContain(`horses[0].identity.${field}`);
  expect(read.problems[0]?.read).toBe(`"${typed}"`);
  expect(read.problems[0]?.allowed).toMatch(allowed);
});

test.each([
  ["900 155000101234", "several makers share"],
  ["985 000012345678", "maker's code (985)"],
  ["121 000012345678", "no country has the figures 121"],
])("%s is legal, or may be, and only flagged", (transponder, says) => {
  const read = readCase(caseText({ identity: { transponder } }));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  expect(read.flags.filter((flag) => flag.where.includes("identity")).map((flag) => flag.says)).toEqual([
    expect.stringContaining(says),
  ]);
});

test("a number for life that is the chip's number is flagged", () => {
  const read = readCase(caseText({ identity: { transponder: "276000000012345", ueln: "276000000012345" } }));
  expect(read.ok && read.flags.map((flag) => flag.says)).toEqual([expect.stringContaining("is it copied?")]);
});
