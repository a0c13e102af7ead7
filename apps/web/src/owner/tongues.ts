import { offeredWord } from "@treewright/core/judge/owner/asks.ts";
import { NOTE } from "../catalogue/de-note.ts";

/** How the owner's page speaks: core's English sentences, and a word to choose by the question that asks for it. */
export interface OwnerTongue {
  readonly tag: "en" | "de";
  readonly said: (english: string) => string;
  readonly choice: (word: string, question: string) => string;
  /** What has to be known of the translation. */
  readonly note?: string;
}

/** Each by its own name. */
export const OWNER_LANGUAGES = { en: "English", de: "Deutsch" } as const;

const ENGLISH: OwnerTongue = { tag: "en", said: (english) => english, choice: offeredWord };

/** German is fetched when it is wanted; where it cannot be, the page stays English. */
export async function ownerTongue(tag: string): Promise<OwnerTongue> {
  if (tag !== "de") return ENGLISH;
  try {
    const { OWNER_PAGE_DE } = await import("../catalogue/de/owner-page.ts");
    return { tag, said: OWNER_PAGE_DE.said, choice: OWNER_PAGE_DE.choice, note: NOTE };
  } catch {
    return ENGLISH;
  }
}
