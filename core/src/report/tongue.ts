/**
 * The language of a paper: its tag (BCP 47), and core's own English in it. A name stands in a sentence as a word in capitals and is
 * filled in after the sentence was said, so that no name is taken for a word.
 */
export interface Tongue {
  readonly tag: string;
  readonly say: (english: string) => string;
}

export const ENGLISH: Tongue = { tag: "en", say: (english) => english };

/** A sentence in the paper's language, with its names. names: by the capitals that stand for them. */
export function told({ say }: Tongue, english: string, names: Readonly<Record<string, string>>): string {
  const places = new RegExp(`\\b(${Object.keys(names).join("|")})\\b`, "g");
  return say(english).replace(places, (place) => names[place] ?? place);
}
