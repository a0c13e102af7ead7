import { asksFor, UNITS, type Unit, usualUnit } from "../engine/quantity/index.ts";
import { ABSENT } from "../terms/knowing.ts";
import type { Field } from "./field.ts";

/** lo and hi in the unit typed, rounded inward to two places so that both printed ends are allowed themselves. */
export function rangeIn(
  field: Pick<Field, "kind" | "lo" | "hi">,
  unit: Unit = usualUnit(field.kind),
): string {
  const scale = (100 * usualUnit(field.kind).times) / unit.times;
  // A millionth of slack, so that 90 mm does not become 90.01 through a binary fraction.
  const lo = Math.ceil(field.lo * scale - 1e-6) / 100;
  const hi = Math.floor(field.hi * scale + 1e-6) / 100;
  return `${lo} to ${hi}${unit.name === "" ? "" : ` ${unit.name}`}`;
}

export function inRange(field: Field, canonical: number): boolean {
  const usual = canonical / usualUnit(field.kind).times;
  const slack = 1e-9 * Math.max(1, Math.abs(field.lo), Math.abs(field.hi));
  return usual >= field.lo - slack && usual <= field.hi + slack;
}

/** A bare number outside its range that would be inside in another unit: ask whether that unit was meant. */
export function asksUnit(field: Field, typed: number | string): string {
  const number = typeof typed === "number" ? typed : Number(typed);
  if (!Number.isFinite(number)) return "";
  const other = UNITS[field.kind].slice(1).filter((unit) => inRange(field, number * unit.times));
  return other.map((unit) => `; if you mean ${number} ${unit.name}, write "${number} ${unit.name}"`).join("");
}

/** Everything a measured field may hold, in words. */
export function allowedReading(field: Pick<Field, "kind" | "lo" | "hi">): string {
  return `${rangeIn(field)} (${asksFor(field.kind)}), or one of the words ${ABSENT.join(", ")}`;
}
