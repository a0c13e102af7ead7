import { valueAt } from "../case/put.ts";
import { type FieldRecord, type Section, stepsOf } from "../road.ts";
import { fieldsOf } from "./groups.ts";

/** Words that stand where nothing was taken yet. */
const EMPTY = ["not-looked", "not-asked", "not-said", "not-told", "not-tried", "unknown", ""];

const isList = (path: string) => path.replace("horses[]", "").includes("[]");
const counts = ({ kind, path }: FieldRecord) =>
  ["measured", "choice", "words", "date", "whole-number", "points", "list"].includes(kind) && !isList(path);

/** How many places of a group hold something, of how many. "Unknown" counts as taken where somebody wrote it. */
export function countOf(group: Section, file: unknown, horse: number): { taken: number; of: number } {
  const fields = fieldsOf(group).filter(counts);
  const taken = fields.filter((field) => {
    const value = valueAt(file, stepsOf(field.path.replace("horses[]", `horses[${horse}]`)));
    if (value === undefined || (Array.isArray(value) && value.length === 0)) return false;
    return value === "unknown" || !EMPTY.includes(String(value));
  });
  return { taken: taken.length, of: fields.length };
}
