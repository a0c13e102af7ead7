import type { Answer } from "@treewright/core/answer.ts";
import { platesOf } from "@treewright/core/papers/plates.ts";
import { wrap } from "./columns.ts";

/** Plates at hand, nearest first, with what the whole makes of each; nothing where the head takes none. */
export function plateLines(result: Answer): string[] {
  const { rows, note } = platesOf(result);
  if (rows.length === 0) return [];
  return [
    "Plates, nearest to the wanted head first",
    ...rows.flatMap(({ name, makes, says }, i) => [
      ...wrap(`${i + 1}. ${name}: ${makes}`, 2, 3),
      ...wrap(says, 5, 2),
    ]),
    ...wrap(note, 2),
    "",
  ];
}
