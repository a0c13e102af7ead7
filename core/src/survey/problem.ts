import type { z } from "zod";
import { aboutPath } from "./about-path.ts";
import { allowedReading } from "./field-range.ts";
import { nearest } from "./nearest.ts";
import { getAt, pathOf } from "./path.ts";
import { type FieldRecord, fieldAt } from "./schema-fields.ts";
import { SURVEY_LIMITS } from "./sizes.ts";

/** One thing wrong in a case file: where (path and plain words), what was read, what is allowed there. */
export interface Problem {
  readonly where: string;
  readonly read: string;
  readonly allowed: string;
}

/** Longest piece of typed text shown back. */
const LONGEST_SHOWN = 60;
/** Most names listed in one sentence. */
const MOST_NAMES = 24;

/** What stands in the file, short enough to show back. */
export function shown(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "string") return `"${clipped(value)}"`;
  if (Array.isArray(value)) return `a list of ${value.length}`;
  return typeof value === "object" && value !== null ? "a group { … }" : String(value);
}

const clipped = (text: string): string =>
  text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN)}…` : text;

export function whereOf(path: string): string {
  if (path === "") return "the whole file";
  const about = aboutPath(path);
  return about === path ? clipped(path) : `${clipped(path)} (${about})`;
}

/** The schema's complaints in plain words. `file` is what was read, `below` the path of what was checked within the case. */
export function problemsOf(issues: readonly z.core.$ZodIssue[], file: unknown, below = ""): Problem[] {
  return issues.flatMap((issue) => {
    const within = pathOf(issue.path);
    const path =
      below === "" ? within : within === "" ? below : `${below}${within.startsWith("[") ? "" : "."}${within}`;
    if (issue.code === "unrecognized_keys") return issue.keys.map((key) => strangeName(path, key));
    if (issue.code === "custom" && issue.params) return [custom(path, issue.params)];
    return [plain(path, getAt(file, issue.path), issue)];
  });
}

function custom(path: string, params: Record<string, unknown>): Problem {
  const read = typeof params.read === "string" ? params.read : shown(params.typed);
  return { where: whereOf(path), read, allowed: String(params.allowed) };
}

function strangeName(path: string, key: string): Problem {
  const known = fieldAt(path)?.keys ?? [];
  const near = nearest(key, known);
  const allowed = near ? `the name "${near}" (did you mean that?)` : `one of the names ${listed(known)}`;
  return { where: whereOf(path), read: `the unknown name "${clipped(key)}"`, allowed };
}

function plain(path: string, value: unknown, issue: z.core.$ZodIssue): Problem {
  const field = fieldAt(path);
  const allowed = field ? allowedAt(field, value) : allowedInside(path, issue);
  return { where: whereOf(path), read: shown(value), allowed };
}

const listed = (names: readonly string[]): string =>
  names.length <= MOST_NAMES
    ? names.join(", ")
    : `${names.slice(0, MOST_NAMES).join(", ")} … (${names.length} in all)`;

/** Below a field's own path: the parts of a full reading, the parts of a point. */
function allowedInside(path: string, issue: z.core.$ZodIssue): string {
  if (/\.(points|repeats\[\d+\])\[\d+\](\[\d+\])?$/.test(path)) return "two numbers [across or along, up]";
  if (issue.code === "invalid_value") return `one of ${listed(issue.values.map(String))}`;
  return issue.message;
}

const hasTooMany = (value: unknown): boolean =>
  typeof value === "object" &&
  value !== null &&
  "read" in value &&
  Array.isArray(value.read) &&
  (value.read.length === 0 || value.read.length > SURVEY_LIMITS.readings);

/** What may stand at a field, in words. */
export function allowedAt(field: FieldRecord, value?: unknown): string {
  const { lo, hi, quantity, words = [] } = field;
  if (quantity !== undefined && hasTooMany(value))
    return `1 to ${SURVEY_LIMITS.readings} repeats of a reading`;
  if (quantity !== undefined && lo !== undefined && hi !== undefined) {
    return `${allowedReading({ kind: quantity, lo, hi })}; or { "read": …, "by": …, "uncertainty": … }`;
  }
  switch (field.kind) {
    case "fixed":
      return words.join(" or ");
    case "choice": {
      const near = typeof value === "string" ? nearest(value, words) : undefined;
      return `one of ${words.join(", ")}${near ? ` (did you mean "${near}"?)` : ""}`;
    }
    case "date":
      return "a day that exists, written yyyy-mm-dd";
    case "whole-number":
      return `a whole number from ${lo} to ${hi}`;
    case "true-or-false":
      return "true or false";
    case "points":
      return `a list of ${lo} to ${hi} points [across or along, up]`;
    case "list":
      return `a list of ${lo ?? 0} to ${hi} items`;
    case "group":
      return `a group { … } with the names ${listed(field.keys ?? [])}`;
    default:
      return lo ? `words of ${lo} to ${hi} letters` : `words of at most ${hi} letters`;
  }
}
