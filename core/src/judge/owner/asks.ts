import { type OwnerQuestion, ownerQuestionSchema } from "./question.ts";

export interface OwnerAsk {
  /** Group and name in the owner's question; the group is empty for most. */
  readonly group: string;
  readonly name: string;
  readonly asks: string;
  readonly words: readonly string[];
  /** What stands where nothing was chosen: that nobody knows. */
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

/** A question out of words chosen, by group and name; what was not chosen nobody knows. */
export function ownerQuestionOf(wordFor: (asked: OwnerAsk) => string): OwnerQuestion {
  const said: Record<string, string> = {};
  const groups: Record<string, Record<string, string>> = {};
  for (const asked of ownerQuestions()) {
    const word = wordFor(asked);
    if (asked.group === "") said[asked.name] = word;
    else groups[asked.group] = { ...groups[asked.group], [asked.name]: word };
  }
  return ownerQuestionSchema.parse({ ...said, ...groups });
}

/** A word as it is offered: "don't know", "under 3". */
export const offeredWord = (word: string): string =>
  word === "dont-know" ? "don't know" : word.replace(/-/g, " ");
