import { createContext, useContext } from "react";
import { chosenAmong } from "./chosen.ts";
import { DE } from "./de.ts";
import { type Catalogue, EN } from "./en.ts";
import { LONG, RIGHT_TO_LEFT, TRADE_LONG, TRADE_RIGHT_TO_LEFT } from "./pseudo.ts";
import { TRADE_EN, type Trade } from "./trade.ts";

/** Languages by their BCP 47 tag. The two made ones are for looking at screens, and begin with the private mark x. */
export const LANGUAGES: Readonly<Record<string, Catalogue>> = {
  en: EN,
  de: DE,
  "x-long": LONG,
  "x-rtl": RIGHT_TO_LEFT,
};

/** Core's words in each. Those that are long are fetched when they are wanted: the first reading waits for no table. */
const TRADES: Readonly<Record<string, () => Promise<Trade>>> = {
  de: async () => (await import("./de/index.ts")).TRADE_DE,
  "x-long": async () => TRADE_LONG,
  "x-rtl": async () => TRADE_RIGHT_TO_LEFT,
};

/** A language with all its words at hand. */
export interface Language {
  readonly tag: string;
  readonly words: Catalogue;
  readonly trade: Trade;
}

const ENGLISH: Language = { tag: "en", words: EN, trade: TRADE_EN };

/** Where its table cannot be fetched (no signal, and never ready without it) core's words stay English: a visit still begins. */
export async function languageOf(tag: string): Promise<Language> {
  const words = LANGUAGES[tag];
  if (words === undefined) return ENGLISH;
  const trade = await TRADES[tag]?.().catch(() => TRADE_EN);
  return { tag, words, trade: trade ?? TRADE_EN };
}

export const directionOf = (tag: string): "ltr" | "rtl" => (tag === "x-rtl" ? "rtl" : "ltr");

/** The language of this device. */
export const chosenLanguage = (): string => chosenAmong(Object.keys(LANGUAGES));

export const LanguageOf = createContext<Language>(ENGLISH);
export const useLanguage = (): Language => useContext(LanguageOf);
export const useWords = (): Catalogue => useContext(LanguageOf).words;
export const useTrade = (): Trade => useContext(LanguageOf).trade;
