import { choiceWords } from "../readings/naming.ts";
import type { Question } from "../road.ts";

/** What was typed, as it is shown back: in its own unit where one was typed, in the usual one where none was. */
export function saidWords(value: unknown, { unit, kind }: Pick<Question, "unit" | "kind">): string {
  if (value === undefined) return "";
  if (Array.isArray(value)) return `${value.length} ×`;
  if (typeof value === "number") return unit ? `${value} ${unit}` : String(value);
  // Words and days stand as they were typed: a hyphen in a name is no space.
  if (typeof value === "string" && (kind === "words" || kind === "date")) return value;
  if (typeof value === "string") return kind === "choice" ? choiceWords(value) : withUnit(value, kind, unit);
  return fullWords(value, unit);
}

const withUnit = (typed: string, kind: Question["kind"], unit: string | undefined): string =>
  kind === "measured" && unit !== undefined && /^[-+]?\d+([.,]\d+)?$/.test(typed.trim())
    ? `${typed} ${unit}`
    : choiceWords(typed);

/** A reading with its repeats: each of them, since their spread is what tells how well it was read. */
function fullWords(value: unknown, unit: string | undefined): string {
  const read = typeof value === "object" && value !== null && "read" in value ? value.read : "";
  const all = Array.isArray(read) ? read.join(" · ") : String(read);
  return unit ? `${all} ${unit}` : all;
}
