import type { Json } from "../case/put.ts";

const asNumber = (typed: string): Json =>
  typed !== "" && String(Number(typed)) === typed ? Number(typed) : typed;

/**
 * What was typed, as the case keeps it: a plain number as a number, anything else ("4 1/4 in", "105,5", "105.0")
 * sign for sign; repeats of one reading are parted by semicolons.
 */
export function toFile(typed: string): Json {
  const parts = typed.split(";").map((part) => part.trim());
  const [first = ""] = parts;
  return parts.length > 1 ? { read: parts.filter((part) => part !== "").map(asNumber) } : asNumber(first);
}

/** What stands in the case, as a hand would type it. */
export function fromFile(value: unknown): string {
  if (value === undefined || value === null) return "";
  if (typeof value === "object" && "read" in value) return fromFile(value.read);
  return Array.isArray(value) ? value.map(String).join("; ") : String(value);
}

/** Lines of two figures each to points; the first line that is not two figures is told by its number. */
export function pointsOf(typed: string): { points: Json[] } | { line: number; words: string } {
  const points: Json[] = [];
  for (const [index, line] of typed.split("\n").entries()) {
    const parts = line
      .trim()
      .split(/[\s;\t]+/)
      .filter((part) => part !== "");
    if (parts.length === 0) continue;
    const [a, b] = parts;
    if (parts.length !== 2 || a === undefined || b === undefined)
      return { line: index + 1, words: line.trim() };
    points.push([asNumber(a), asNumber(b)]);
  }
  return { points };
}

/** Points as lines of two figures. */
export function linesOf(points: unknown): string {
  if (!Array.isArray(points)) return "";
  return points.map((point) => (Array.isArray(point) ? point.map(String).join(" ") : "")).join("\n");
}
