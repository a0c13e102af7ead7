import { CASE_BYTES_MAX } from "./case.ts";
import { JOB_FORMAT, JOB_PATH, JOB_VERSION, jobSchema, type SurveyedJob } from "./job.ts";
import { type Problem, problemsOf, shown } from "./problem.ts";
import { readJson } from "./read-json.ts";

export type JobRead =
  | { readonly ok: true; readonly job: SurveyedJob }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Reads the text of a job file: the whole job, or every problem found; never a part of it, never an exception. */
export function readJob(text: string): JobRead {
  if (text.length > CASE_BYTES_MAX)
    return refused([
      { where: "the whole file", read: "too much", allowed: `at most ${CASE_BYTES_MAX / 1e6} MB` },
    ]);
  const json = readJson(text);
  if (!json.ok)
    return refused(
      json.faults.map(({ line, column, read, allowed }) => ({
        where: `line ${line}, column ${column}`,
        read,
        allowed,
      })),
    );
  const strange = otherFormat(json.value);
  if (strange) return refused([strange]);
  const parsed = jobSchema.safeParse(json.value);
  return parsed.success
    ? { ok: true, job: parsed.data }
    : refused(problemsOf(parsed.error.issues, json.value, JOB_PATH));
}

const refused = (problems: readonly Problem[]): JobRead => ({ ok: false, problems });

function otherFormat(value: unknown): Problem | undefined {
  const { format, version } =
    typeof value === "object" && value !== null ? (value as Record<string, unknown>) : {};
  if (format !== JOB_FORMAT)
    return {
      where: "format",
      read: shown(format),
      allowed: `"${JOB_FORMAT}"; this is not a job at the press`,
    };
  return version === JOB_VERSION
    ? undefined
    : { where: "version", read: shown(version), allowed: `the version ${JOB_VERSION}` };
}
