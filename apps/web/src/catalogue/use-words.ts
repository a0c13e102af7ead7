import { createContext, useContext } from "react";
import { DE } from "./de.ts";
import { type Catalogue, EN } from "./en.ts";
import { LONG, RIGHT_TO_LEFT } from "./pseudo.ts";

/** Languages by their BCP 47 tag. The two made ones are for looking at screens, and begin with the private mark x. */
export const LANGUAGES: Readonly<Record<string, Catalogue>> = {
  en: EN,
  de: DE,
  "x-long": LONG,
  "x-rtl": RIGHT_TO_LEFT,
};

export const directionOf = (tag: string): "ltr" | "rtl" => (tag === "x-rtl" ? "rtl" : "ltr");

const KEY = "language";

/** The language that was chosen here, else the browser's where there is one, else English. */
export function chosenLanguage(): string {
  const chosen = localStorage.getItem(KEY) ?? navigator.language.slice(0, 2);
  return chosen in LANGUAGES ? chosen : "en";
}

export function chooseLanguage(tag: string): void {
  localStorage.setItem(KEY, tag);
}

export const WordsOf = createContext<Catalogue>(EN);
export const useWords = (): Catalogue => useContext(WordsOf);
