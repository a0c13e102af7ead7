import type { Problem } from "@treewright/core/survey/problem.ts";
import { type CaseRead, readCase } from "@treewright/core/survey/read-case.ts";
import { wrap } from "./columns.ts";
import type { Desk } from "./desk.ts";
import { EXIT, Stop } from "./exit.ts";
import { readCaseText } from "./files.ts";

export type GoodCase = Extract<CaseRead, { ok: true }>;

export function problemLines({ where, read, allowed }: Problem): string[] {
  return [...wrap(where, 2), ...wrap(`read: ${read}`, 4, 2), ...wrap(`allowed: ${allowed}`, 4, 2)];
}

/** Reads one case; where it has problems they are told, and undefined comes back. */
export function openOrTell(path: string, desk: Desk): GoodCase | undefined {
  const read = readCase(readCaseText(path));
  if (read.ok) return read;
  tellProblems(path, read.problems, desk);
  return undefined;
}

/** Every problem of a file, by where it stands. */
export function tellProblems(path: string, problems: readonly Problem[], desk: Desk): void {
  for (const line of wrap(`${path}: ${problems.length} to put right`)) desk.tell(line);
  for (const line of problems.flatMap(problemLines)) desk.tell(line);
}

/** Reads one case or ends the command. */
export function openCase(path: string, desk: Desk): GoodCase {
  const good = openOrTell(path, desk);
  if (good) return good;
  throw new Stop(
    EXIT.problemInCase,
    "Nothing was calculated: a case with a problem gets no part of an answer.",
  );
}
