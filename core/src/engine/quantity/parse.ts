import { readNumber } from "./read-number.ts";
import { type QuantityKind, UNITS, type Unit, unitCalled, usualUnit } from "./units.ts";

/** `value` in the kind's kept unit; `unit` is the (first) unit typed. */
export type Parsed =
  | { readonly ok: true; readonly value: number; readonly unit: Unit; readonly unitTyped: boolean }
  | { readonly ok: false; readonly asks: string };

/** Longest text looked at; "11 st 6 1/2 lb" has 14 signs. */
const LONGEST = 60;
const PART = /^\s*(\+?[\d.,¼½¾⅛⅜⅝⅞][\d.,/¼½¾⅛⅜⅝⅞]*(?:(?:\s+|-)\d+\/\d+)?)\s*([^\d\s¼½¾⅛⅜⅝⅞]*)/;

/**
 * Reads a typed quantity: a bare number or text in `bare` (the kind's usual unit when not given),
 * a number with a unit ("8 1/4 in"), or falling units added up ("11 st 6 lb"). Never guesses.
 */
export function parseQuantity(
  typed: number | string,
  kind: QuantityKind,
  bare: Unit = usualUnit(kind),
): Parsed {
  if (typeof typed === "number") return finite(typed * bare.times, bare, false);
  const text = typed.trim();
  if (text === "" || text.length > LONGEST) return { ok: false, asks: asksFor(kind) };
  return addUp(text, kind, bare);
}

function addUp(text: string, kind: QuantityKind, bare: Unit): Parsed {
  const [, sign = "", positive = ""] = /^([-−–]?)(.*)$/s.exec(text) ?? [];
  if (positive.trim() === "") return { ok: false, asks: asksFor(kind) };
  let rest = positive;
  let sum = 0;
  let first: Unit | undefined;
  let last: Unit | undefined;
  while (rest !== "") {
    const part = PART.exec(rest);
    if (!part) return { ok: false, asks: asksFor(kind) };
    const number = readNumber(part[1] ?? "");
    if (!number.ok) return number;
    const word = (part[2] ?? "").replace(/[.,]$/, "");
    rest = rest.slice(part[0].length).trim();
    if (word === "")
      return first || rest !== ""
        ? { ok: false, asks: asksFor(kind) }
        : finite(signed(sign, number.value) * bare.times, bare, false);
    const unit = unitCalled(word, kind);
    if (!unit) return { ok: false, asks: asksFor(kind) };
    if (last && unit.times >= last.times) return { ok: false, asks: asksFor(kind) };
    sum += number.value * unit.times;
    first ??= unit;
    last = unit;
  }
  return finite(signed(sign, sum), first ?? bare, true);
}

const signed = (sign: string, value: number): number => (sign === "" ? value : -value);

function finite(value: number, unit: Unit, unitTyped: boolean): Parsed {
  if (!Number.isFinite(value)) return { ok: false, asks: "a finite number" };
  return { ok: true, value, unit, unitTyped };
}

/** What may be typed for a kind, as words to follow "allowed:". */
export function asksFor(kind: QuantityKind): string {
  const names = UNITS[kind].map((unit) => unit.name).filter((name) => name !== "");
  if (names.length === 0) return "a whole number without a unit";
  return `a number in ${usualUnit(kind).name}, or a number followed by its unit (${names.join(", ")})`;
}
