import { z } from "zod";
import { STATIONS } from "../terms/places.ts";
import { CASE_FORMAT, CASE_VERSION, type CaseFile } from "./case.ts";
import { getAt, putAt, stepsOf } from "./path.ts";
import { type Problem, problemsOf, shown, whereOf } from "./problem.ts";
import { type FieldRecord, fieldAt } from "./schema-fields.ts";

export type Answered =
  | { readonly ok: true; readonly draft: CaseFile }
  | { readonly ok: false; readonly problem: Problem };

/** A case with nothing in it yet: the date of the visit is given by the caller, since core has no clock. */
export function emptyCase(title: string, date: string): CaseFile {
  return {
    format: CASE_FORMAT,
    version: CASE_VERSION,
    title,
    visit: { date },
    saddle: { name: "saddle" },
    horses: [{ name: "horse" }],
  };
}

/** The draft with one typed answer in its place, or what is wrong with it. Nothing typed leaves the draft as it is. */
export function applyAnswer(draft: CaseFile, path: string, typed: string): Answered {
  const field = fieldAt(path);
  if (!field || field.kind === "group" || field.kind === "list" || field.kind === "fixed") {
    return {
      ok: false,
      problem: { where: whereOf(path), read: shown(typed), allowed: "the path of a question" },
    };
  }
  if (typed.trim() === "") return { ok: true, draft };
  const filled = filledIn(draft, path, field, typed.trim());
  const problem = gapBefore(draft, path) ?? otherUnit(draft, path, typed) ?? problemAt(filled, path, field);
  return problem ? { ok: false, problem } : { ok: true, draft: filled };
}

/** The draft with the answer in it, right or wrong. */
function filledIn(draft: CaseFile, path: string, field: FieldRecord, typed: string): CaseFile {
  const unit = field.kind === "points" ? UNIT_BEFORE.exec(typed) : null;
  const filled = putAt(draft, stepsOf(path), valueOf(field, unit ? typed.slice(unit[0].length) : typed));
  const withUnit = unit?.[1] ? putAt(filled, stepsOf(unitPlaceOf(path)), unit[1]) : filled;
  // One place of a case file was filled; whether rightly, the schema says next.
  return withStation(withUnit as CaseFile, path);
}

/** The unit of a line stands before its points. */
const UNIT_BEFORE = /^(mm|cm|in)\b[\s:]*/;

/** Where the unit of a line stands, whether these are its points or those of a drawing again. */
export const unitPlaceOf = (path: string): string => path.replace(/(points|repeats\[\d+\])$/, "unit");

/** A tracing that is drawn again has the unit of the first: its points would stand at another size else. */
function otherUnit(draft: CaseFile, path: string, typed: string): Problem | undefined {
  const unit = UNIT_BEFORE.exec(typed.trim())?.[1];
  const place = unitPlaceOf(path);
  if (unit === undefined || !/repeats\[\d+\]$/.test(path)) return undefined;
  const first = getAt(draft, stepsOf(place)) ?? "mm";
  return unit === first
    ? undefined
    : { where: whereOf(path), read: shown(unit), allowed: `${String(first)}, in which the first was typed` };
}

/** The second of a list before the first would leave a hole in it. */
function gapBefore(draft: CaseFile, path: string): Problem | undefined {
  const steps = stepsOf(path);
  const at = steps.findIndex((step, i) => {
    const list = typeof step === "number" && step > 0 ? getAt(draft, steps.slice(0, i)) : undefined;
    return typeof step === "number" && step > 0 && !(Array.isArray(list) && list.length >= step);
  });
  return at < 0
    ? undefined
    : {
        where: whereOf(path),
        read: `number ${Number(steps[at]) + 1} of a list`,
        allowed: "the one before it first",
      };
}

/** Points are checked with their trace, since its unit and its other points bear on them. */
function problemAt(filled: CaseFile, path: string, field: FieldRecord): Problem | undefined {
  const whole = /^(.*\.(?:traces\[\d+\]|profile))\.(?:points|unit|repeats\[\d+\])$/.exec(path)?.[1];
  const place = whole ?? path;
  const schema = whole === undefined ? field.schema : fieldAt(whole)?.schema;
  const parsed = z.core.safeParse(schema ?? field.schema, getAt(filled, stepsOf(place)));
  if (parsed.success || (whole !== undefined && getAt(filled, stepsOf(`${whole}.points`)) === undefined))
    return undefined;
  return problemsOf(parsed.error.issues, getAt(filled, stepsOf(place)), place)[0];
}

/** A trace is of the station of its place in the list, until it says otherwise. */
function withStation(draft: CaseFile, path: string): CaseFile {
  const trace = /^horses\[\d+\]\.traces\[(\d+)\]/.exec(path);
  if (!trace) return draft;
  const steps = stepsOf(`${trace[0]}.station`);
  const station = STATIONS[Number(trace[1]) % STATIONS.length];
  return getAt(draft, steps) === undefined ? (putAt(draft, steps, station) as CaseFile) : draft;
}

function valueOf(field: FieldRecord, typed: string): unknown {
  switch (field.kind) {
    case "choice":
      return wordOf(typed, field.words ?? []);
    case "whole-number":
      return /^\d+$/.test(typed) ? Number(typed) : typed;
    case "true-or-false":
      return /^(y|yes|true)$/i.test(typed) ? true : /^(n|no|false)$/i.test(typed) ? false : typed;
    case "points":
      return typed
        .split(";")
        .filter((pair) => pair.trim() !== "")
        .map(pairOf);
    case "measured":
      return readingOf(typed);
    default:
      return typed;
  }
}

/** "-90 -60", "-90, -60" or "3 1/2 in, 2 in": two coordinates. */
function pairOf(pair: string): unknown[] {
  const parts =
    pair.includes(",") && pair.split(",").length === 2 ? pair.split(",") : pair.trim().split(/\s+/);
  return parts.map((part) =>
    Number.isFinite(Number(part)) && part.trim() !== "" ? Number(part) : part.trim(),
  );
}

const hyphened = (typed: string): string => typed.toLowerCase().replace(/['’]/g, "").replace(/\s+/g, "-");

/** Yes and no may be typed by their first letter, words with spaces for hyphens, and "don't know" for unknown. */
function wordOf(typed: string, words: readonly string[]): string {
  const plain = hyphened(typed);
  const exact = words.find((word) => word.toLowerCase() === plain);
  if (exact) return exact;
  if (/^(dont-know|not-known|\?)$/.test(plain) && words.includes("unknown")) return "unknown";
  const starts = words.filter((word) => word.startsWith(plain) && (word === "yes" || word === "no"));
  return starts.length === 1 && starts[0] ? starts[0] : typed;
}

/** "45; 46; 44": the same thing read again, each time anew; else one reading, or why there is none. */
export function readingOf(typed: string): unknown {
  const parts = typed
    .split(";")
    .map((part) => part.trim())
    .filter((part) => part !== "");
  return parts.length > 1 ? { read: parts } : absentOf(parts[0] ?? typed);
}

function absentOf(typed: string): string {
  const plain = hyphened(typed);
  if (/^(dont-know|not-known|\?)$/.test(plain)) return "unknown";
  return ["unknown", "not-asked", "not-looked", "cannot-be-seen"].includes(plain) ? plain : typed;
}
