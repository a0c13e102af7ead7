import { roadOf, toJudge } from "@treewright/core/answer/road.ts";
import { judgeCase } from "@treewright/core/judge/judge-case.ts";
import { RIDES, SEED, surveyOf } from "../answer/examples.ts";

export const FILE = new URL("./judged.json", import.meta.url);
export { RIDES };

/** What is judged at the means of one horse of an example, part by part. */
export function partsOf({ name, horse }: (typeof RIDES)[number]): readonly (readonly [string, unknown])[] {
  const input = toJudge(roadOf(surveyOf(name), horse, SEED));
  return Object.entries(judgeCase(input));
}
