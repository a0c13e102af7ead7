import type { RawCase } from "./migrations.ts";
import { type Problem, shown, whereOf } from "./problem.ts";

/** Two horses of one name, or one trace typed twice: either would be counted as two. */
export function doubled(file: RawCase): Problem[] {
  const horses = itemsOf(file.horses);
  const names = secondTimes(horses.map((horse) => fieldOf(horse, "name")));
  const traces = horses.flatMap((horse, at) => {
    const points = itemsOf(fieldOf(horse, "traces")).map((trace) => fieldOf(trace, "points"));
    return secondTimes(points).map((i) => twice(`horses[${at}].traces[${i}].points`, points[i]));
  });
  return [...names.map((at) => twice(`horses[${at}].name`, fieldOf(horses[at], "name"))), ...traces];
}

/** Where a value stands that stood before. */
function secondTimes(values: readonly unknown[]): number[] {
  const texts = values.map((value) => JSON.stringify(value));
  return texts.flatMap((text, at) => (text !== undefined && texts.indexOf(text) < at ? [at] : []));
}

const itemsOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

const fieldOf = (value: unknown, name: string): unknown =>
  typeof value === "object" && value !== null
    ? Object.getOwnPropertyDescriptor(value, name)?.value
    : undefined;

const twice = (path: string, value: unknown): Problem => ({
  where: whereOf(path),
  read: `${shown(value)} a second time`,
  allowed:
    "each horse by its own name, and each trace once (the same trace drawn again belongs in its repeats)",
});
