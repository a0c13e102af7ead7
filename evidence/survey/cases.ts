import { readFileSync } from "node:fs";
import { type CaseRead, readCase } from "../../core/src/survey/read-case.ts";

export type Fixture =
  | "minimal"
  | "full"
  | "inches"
  | "version-1"
  | "version-1-in-version-3"
  | "version-2"
  | "version-2-in-version-3";

export const fixtureText = (name: Fixture): string =>
  readFileSync(new URL(`../../core/src/survey/fixtures/${name}.json`, import.meta.url), "utf8");

/** biome-ignore lint/suspicious/noExplicitAny: a test breaks cases on purpose, which no type allows */
export type Breakable = any;
export const breakable = (name: Fixture = "full"): Breakable => JSON.parse(fixtureText(name));

/** The full case with something done to it, read. */
export function changed(change: (file: Breakable) => void, name: Fixture = "full"): CaseRead {
  const file = breakable(name);
  change(file);
  return readCase(JSON.stringify(file));
}

export function surveyOf(read: CaseRead) {
  if (!read.ok)
    throw new Error(
      read.problems.map(({ where, read: typed, allowed }) => `${where}: ${typed}; ${allowed}`).join("\n"),
    );
  return read.survey;
}

export const problemsIn = (read: CaseRead) => (read.ok ? [] : read.problems);
export const flagsIn = (read: CaseRead) => (read.ok ? read.flags : []);
