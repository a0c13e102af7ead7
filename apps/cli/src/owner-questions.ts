import { ownerQuestionSchema } from "@treewright/core/judge/owner/question.ts";

export interface OwnerAsk {
  /** Group and name in the owner's question; the group is empty for most. */
  readonly group: string;
  readonly name: string;
  readonly asks: string;
  readonly words: readonly string[];
  /** What Enter says: that nobody knows. */
  readonly otherwise: string;
}

/** The owner's questions in their order, out of the schema that judges the answers. */
export function ownerQuestions(): OwnerAsk[] {
  return Object.entries(ownerQuestionSchema.shape).flatMap(([name, field]) => {
    const inner = field.unwrap();
    if ("options" in inner) {
      return [
        {
          group: "",
          name,
          asks: field.description ?? name,
          words: inner.options,
          otherwise: unknownOf(inner.options),
        },
      ];
    }
    return Object.entries(inner.shape).map(([part, one]) => {
      const { options } = one.unwrap();
      return {
        group: name,
        name: part,
        asks: one.description ?? part,
        words: options,
        otherwise: unknownOf(options),
      };
    });
  });
}

const unknownOf = (words: readonly string[]): string =>
  words.find((word) => word === "dont-know" || word === "unknown") ?? "";

/** The words as they are offered: "don't know", "under 3". */
export const offered = ({ words }: OwnerAsk): readonly string[] =>
  words.map((word) => (word === "dont-know" ? "don't know" : word.replace(/-/g, " ")));

/** A word typed in full or by its beginning, where only one begins so; Enter and "?" say that nobody knows. */
export function wordTyped(typed: string, { words, otherwise }: OwnerAsk): string | undefined {
  const plain = typed.trim().toLowerCase().replace(/['’]/g, "").replace(/\s+/g, "-");
  if (plain === "" || plain === "?" || plain === "i-dont-know" || plain === "dont-know") return otherwise;
  const begin = words.filter((word) => word.toLowerCase().startsWith(plain));
  return words.includes(plain) ? plain : begin.length === 1 ? begin[0] : undefined;
}
