import { type OwnerAsk, offeredWord } from "@treewright/core/judge/owner/asks.ts";

/** The words as they are offered: "don't know", "under 3". */
export const offered = ({ words }: OwnerAsk): readonly string[] => words.map(offeredWord);

/** A word typed in full or by its beginning, where only one begins so; Enter and "?" say that nobody knows. */
export function wordTyped(typed: string, { words, otherwise }: OwnerAsk): string | undefined {
  const plain = typed.trim().toLowerCase().replace(/['’]/g, "").replace(/\s+/g, "-");
  if (plain === "" || plain === "?" || plain === "i-dont-know" || plain === "dont-know") return otherwise;
  const begin = words.filter((word) => word.toLowerCase().startsWith(plain));
  return words.includes(plain) ? plain : begin.length === 1 ? begin[0] : undefined;
}
