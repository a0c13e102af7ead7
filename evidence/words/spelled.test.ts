import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { calledBack } from "../../apps/web/src/spoken/called.ts";
import { ENGLISH } from "../../apps/web/src/spoken/english.ts";
import { GERMAN } from "../../apps/web/src/spoken/german.ts";
import type { Tongue } from "../../apps/web/src/spoken/tongue.ts";

/*
 * Number words against the spell-out rules of a general library (see `source` in the file). Units, fractions and "ein" before a
 * unit are not in those rules: their examples are ours.
 */
interface Spelled {
  readonly sha256: string;
  readonly whole: Readonly<Record<string, string>>;
  readonly parts: Readonly<Record<string, string>>;
}
const spelled: Readonly<Record<"en" | "de", Spelled>> = JSON.parse(
  readFileSync(new URL("spelled.json", import.meta.url), "utf8"),
);
const TONGUES: readonly (readonly ["en" | "de", Tongue])[] = [
  ["en", ENGLISH],
  ["de", GERMAN],
];
const ALL = Array.from({ length: 10_000 }, (_, number) => number);

test.each(TONGUES)("%s: examples of the library, whole and with decimals", (tag, tongue) => {
  for (const [number, words] of Object.entries(spelled[tag].whole))
    expect(tongue.whole(Number(number))).toBe(words);
  for (const [typed, words] of Object.entries(spelled[tag].parts)) {
    expect(calledBack(typed, undefined, tongue)).toBe(words);
    expect(calledBack(typed.replace(".", ","), undefined, tongue)).toBe(words);
  }
});

test.each(TONGUES)("%s: every number from 0 to 9999 as the library has it, no two alike", (tag, tongue) => {
  const words = ALL.map(tongue.whole);
  expect(createHash("sha256").update(words.join("\n")).digest("hex")).toBe(spelled[tag].sha256);
  expect(new Set(words).size).toBe(ALL.length);
});

test.each([
  ["174", "mm", "one hundred seventy-four millimetres", "einhundertvierundsiebzig Millimeter"],
  ["1", "mm", "one millimetre", "ein Millimeter"],
  ["101", "mm", "one hundred one millimetres", "einhundertein Millimeter"],
  ["1", "weeks", "one week", "eine Woche"],
  ["52", "deg", "fifty-two degrees", "zweiundfünfzig Grad"],
  ["17.4 cm", "mm", "seventeen point four centimetres", "siebzehn Komma vier Zentimeter"],
  ["-3,5", "mm", "minus three point five millimetres", "minus drei Komma fünf Millimeter"],
  ["8 1/4 in", "mm", "eight and one quarter inches", "acht und ein Viertel Zoll"],
  ["1/4 in", "mm", "one quarter inch", "ein Viertel Zoll"],
  ["6-7/8 in", "mm", "six and seven eighths inches", "sechs und sieben Achtel Zoll"],
  ["11 st 6 lb", "kg", "eleven stone six pounds", "elf Stone sechs Pfund (lb)"],
  ["0", undefined, "zero", "null"],
  ["3", undefined, "three", "drei"],
])("%s in %s", (typed, unit, english, german) => {
  expect(calledBack(typed, unit, ENGLISH)).toBe(english);
  expect(calledBack(typed, unit, GERMAN)).toBe(german);
});

test.each(["", "-", "abc", "8 1/7 in", "5 furlongs", "12345678", "1.2.3", "unknown"])(
  "%s is no figure to call back, and is said as typed",
  (typed) => {
    expect(calledBack(typed, "mm", ENGLISH)).toBeUndefined();
  },
);
