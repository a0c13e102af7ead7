import type { Answer } from "@treewright/core/answer.ts";
import { wholeTreeOf } from "@treewright/core/papers/whole-tree.ts";
import { wrap } from "./columns.ts";

/** The whole tree that the chosen setting makes, each figure with its range. */
export function wholeTreeLines(result: Answer): string[] {
  const tree = wholeTreeOf(result);
  if (tree === undefined) return [];
  return [
    "The whole tree, against today",
    ...tree.rows.map(({ what, value }) => `  ${value.padEnd(24)}${what}`),
    "",
    ...tree.says.flatMap((text) => wrap(text, 2)),
    "",
    ...wrap(`Stands on: ${tree.assumed.join("; ")}.`),
    "",
  ];
}
