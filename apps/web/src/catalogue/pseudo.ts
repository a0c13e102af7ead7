import { type Catalogue, EN } from "./en.ts";
import { changedTrade } from "./trade.ts";

/** How much longer the long language is than English: German and French are up to so much (common practice, no source). */
const LONGER = 0.3;
const ACCENTS: Readonly<Record<string, string>> = {
  a: "á",
  e: "é",
  i: "í",
  o: "ó",
  u: "ú",
  y: "ý",
  n: "ñ",
  c: "ç",
};

const accented = (words: string): string => [...words].map((letter) => ACCENTS[letter] ?? letter).join("");

/** What is added breaks into lines as words do. */
const WORD = 12;
const filler = (signs: number): string =>
  "~".repeat(signs).replace(new RegExp(`~{${WORD}}(?=~)`, "g"), "$& ");

/** Every text longer by a third and marked at both ends: what is cut off, and what was never in the catalogue, shows. */
const longer = (words: string): string => `[${accented(words)}${filler(Math.ceil(LONGER * words.length))}]`;
/** Every text between signs that turn it to run from right to left; its figures keep their own way, as they do there (Unicode 15, UAX 9). */
const turned = (words: string): string =>
  `\u202E${words.replace(/\d[\d.,:/]*/g, (figure) => `\u2066${figure}\u2069`)}\u202C`;

function over<T>(texts: T, change: (words: string) => string): T {
  const all = Object.entries(texts as object).map(([key, value]) => {
    if (typeof value === "string") return [key, change(value)];
    if (typeof value === "function") return [key, (...given: unknown[]) => change(String(value(...given)))];
    return [key, over(value, change)];
  });
  // Key for key the same shape, with the same kinds of text in it.
  return Object.fromEntries(all) as T;
}

export const LONG: Catalogue = { ...over<Catalogue>(EN, longer), name: "[long]" };
export const RIGHT_TO_LEFT: Catalogue = { ...over<Catalogue>(EN, turned), name: "[right to left]" };

export const TRADE_LONG = changedTrade(longer);
export const TRADE_RIGHT_TO_LEFT = changedTrade(turned);
