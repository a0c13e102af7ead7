import type { z } from "zod";
import { type Problem, problemsOf, shown } from "./problem.ts";
import { readText } from "./read-text.ts";

/** A kind of file that stands beside a case: its name and version, its schema, and the path its fields are known under. */
export interface FileKind<T> {
  readonly format: string;
  readonly version: number;
  readonly schema: z.ZodType<T>;
  readonly path: string;
  /** "a stock of plates" */
  readonly called: string;
}

export type FileRead<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The whole file, or every problem found; never a part of it, never an exception. */
export function readBeside<T>(text: string, kind: FileKind<T>): FileRead<T> {
  const json = readText(text);
  if (!json.ok) return json;
  const strange = otherFormat(json.value, kind);
  if (strange) return { ok: false, problems: [strange] };
  const parsed = kind.schema.safeParse(json.value);
  return parsed.success
    ? { ok: true, value: parsed.data }
    : { ok: false, problems: problemsOf(parsed.error.issues, json.value, kind.path) };
}

function otherFormat(value: unknown, kind: FileKind<unknown>): Problem | undefined {
  const { format, version } =
    typeof value === "object" && value !== null ? (value as Record<string, unknown>) : {};
  if (format !== kind.format)
    return { where: "format", read: shown(format), allowed: `"${kind.format}"; this is not ${kind.called}` };
  return version === kind.version
    ? undefined
    : { where: "version", read: shown(version), allowed: `the version ${kind.version}` };
}
