import { CASE_FORMAT, CASE_VERSION, type CaseFile, caseSchema, type Survey } from "./case.ts";
import { doubled } from "./doubled.ts";
import { type Flag, flagsOf } from "./flags.ts";
import { MIGRATIONS, migrate, oldestRead, type RawCase } from "./migrations.ts";
import { type Problem, problemsOf, shown } from "./problem.ts";
import { readText } from "./read-text.ts";

export type { Flag, Problem };
export type CaseRead =
  | { readonly ok: true; readonly survey: Survey; readonly file: CaseFile; readonly flags: readonly Flag[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** More problems than this are counted, not listed. */
const MOST_PROBLEMS = 100;

/**
 * Reads the text of a case file. Either a whole survey with things to look at again, or every problem found (at most 100):
 * never a part of an answer, never an exception. `file` is the case as typed, brought to the current version.
 */
export function readCase(text: string): CaseRead {
  const json = readText(text);
  return json.ok ? readCaseValue(json.value) : refused(json.problems);
}

/** The same for a case that is a value already, such as a form's. */
export function readCaseValue(value: unknown): CaseRead {
  const known = knownVersion(value);
  if ("read" in known) return refused([known]);
  const file = migrate(known.file, known.version);
  const parsed = caseSchema.safeParse(file);
  const twice = doubled(file);
  if (!parsed.success)
    return refused(
      [...problemsOf(parsed.error.issues, file), ...twice].map((one) => migratedNote(one, known.version)),
    );
  if (twice.length > 0) return refused(twice);
  // What the schema has just read is what a case file is.
  return { ok: true, survey: parsed.data, file: file as CaseFile, flags: flagsOf(parsed.data) };
}

function knownVersion(value: unknown): { file: RawCase; version: number } | Problem {
  if (typeof value !== "object" || value === null || Array.isArray(value)) {
    return {
      where: "the whole file",
      read: shown(value),
      allowed: `a Treewright case: a group { "format": "${CASE_FORMAT}", … }`,
    };
  }
  const { format, version } = value as RawCase;
  if (format !== CASE_FORMAT)
    return {
      where: "format",
      read: shown(format),
      allowed: `"${CASE_FORMAT}"; this is not a Treewright case`,
    };
  const oldest = oldestRead(MIGRATIONS, CASE_VERSION);
  const allowed = `a version from ${oldest} to ${CASE_VERSION}`;
  if (typeof version !== "number" || !Number.isInteger(version) || version < oldest)
    return { where: "version", read: shown(version), allowed };
  if (version <= CASE_VERSION) return { file: value as RawCase, version };
  return {
    where: "version",
    read: `${version}: written by a newer Treewright`,
    allowed: `${allowed}; read it with the newer one. Nothing was changed`,
  };
}

const migratedNote = (problem: Problem, version: number): Problem =>
  version === CASE_VERSION
    ? problem
    : {
        ...problem,
        where: `${problem.where}, its place in version ${CASE_VERSION} (the file is of version ${version})`,
      };

function refused(problems: readonly Problem[]): CaseRead {
  if (problems.length <= MOST_PROBLEMS) return { ok: false, problems };
  const more = problems.length - MOST_PROBLEMS;
  const rest = {
    where: "further on",
    read: `and ${more} more`,
    allowed: "put the first ones right and read again",
  };
  return { ok: false, problems: [...problems.slice(0, MOST_PROBLEMS), rest] };
}
