import type { Trade } from "../catalogue/trade.ts";
import { ABSENT, nameOf, type Question } from "../road.ts";

/** What was typed, as it is shown back: in its own unit where one was typed, in the usual one where none was. */
export function saidWords(
  value: unknown,
  { unit, kind, path }: Pick<Question, "unit" | "kind" | "path">,
  trade: Trade,
): string {
  const unitWords = unit === undefined ? "" : trade.choice(unit, "unit");
  if (value === undefined) return "";
  if (Array.isArray(value)) return `${value.length} ×`;
  if (typeof value === "number") return withUnit(String(value), unitWords);
  if (typeof value !== "string") return fullWords(value, unitWords);
  if (kind === "choice") return trade.choice(value, nameOf(path));
  // Words and days stand as they were typed: a hyphen in a name is no space.
  if (kind !== "measured") return value;
  return FIGURE.test(value.trim()) ? withUnit(value, unitWords) : absentWords(value, trade);
}

/** The same for the ear: figures in number words, a figure that is none as it was typed. */
export function calledWords(value: unknown, question: Question, trade: Trade): string {
  const { kind, unit } = question;
  if (kind !== "measured" && kind !== "whole-number") return saidWords(value, question, trade);
  return readOf(value)
    .map((one) => trade.called(one, unit) ?? absentWords(one, trade))
    .join("; ");
}

const FIGURE = /^[-+]?\d+([.,]\d+)?$/;
const withUnit = (figure: string, unit: string): string => (unit === "" ? figure : `${figure} ${unit}`);

/** Why a reading is missing, in words; a figure with a unit of its own as it was typed. */
const absentWords = (typed: string, trade: Trade): string =>
  ABSENT.some((word) => word === typed) ? trade.choice(typed) : typed;

/** A reading with its repeats: each of them, since their spread is what tells how well it was read. */
function fullWords(value: unknown, unit: string): string {
  return withUnit(readOf(value).join(" · "), unit);
}

/** What was read: one value as typed, or each repeat of a full reading. */
function readOf(value: unknown): readonly string[] {
  const read = typeof value === "object" && value !== null && "read" in value ? value.read : value;
  return (Array.isArray(read) ? read : [read]).map(String);
}
