import { useEffect, useState } from "react";
import { ENGLISH, type Tongue } from "../road.ts";
import { TRADE_EN } from "./trade.ts";
import { languageOf } from "./use-words.ts";

/**
 * The language of a paper. A made language is for looking at screens: its paper stays in English; so does one whose table could not be
 * fetched, and it is then called English too.
 */
export async function tongueOf(language: string): Promise<Tongue> {
  if (language.startsWith("x-")) return ENGLISH;
  const { tag, trade } = await languageOf(language);
  return trade === TRADE_EN ? ENGLISH : { tag, say: trade.said };
}

/** The same for a screen; undefined until its words are here. */
export function useTongue(language: string): Tongue | undefined {
  const [known, setKnown] = useState<{ readonly language: string; readonly tongue: Tongue }>();
  useEffect(() => {
    let isWanted = true;
    void tongueOf(language).then((tongue) => isWanted && setKnown({ language, tongue }));
    return () => {
      isWanted = false;
    };
  }, [language]);
  return known?.language === language ? known.tongue : undefined;
}
