import type { Tongue } from "./tongue.ts";

/** Larger numbers nobody calls out: those are read off a chip or a passport. */
const MOST = 999_999;
/** A number, a fraction behind it or by itself, and a unit. */
const PART = /^(?:(\d+)(?:[.,](\d+))?(?![\d/]))?(?:[ -]?(\d+)\/(\d+))?\s*([^\d\s.,/]+)?\.?\s*/;

/**
 * A typed figure in words, for the one who called it: "174" in mm is "one hundred seventy-four millimetres", "8 1/4 in" is
 * "eight and one quarter inches", "11 st 6 lb" each by itself. Undefined for what is no figure: it is said as typed.
 * unit: the sign of the usual one, for a bare number.
 */
export function calledBack(typed: string, unit: string | undefined, tongue: Tongue): string | undefined {
  const [, sign = "", size = ""] = /^\s*([-−–+]?)\s*(.*)$/s.exec(typed) ?? [];
  const parts: string[] = [];
  for (let rest = size; rest !== ""; ) {
    const found = PART.exec(rest);
    if (!found) return undefined;
    const words = partSaid(found, unit, tongue);
    if (words === undefined) return undefined;
    // Only falling units are added up: "11 st 6 lb". Two numbers without units are no figure.
    if (found[0].length < size.length && found[5] === undefined) return undefined;
    parts.push(words);
    rest = rest.slice(found[0].length);
  }
  if (parts.length === 0) return undefined;
  return `${sign === "" || sign === "+" ? "" : `${tongue.minus} `}${parts.join(" ")}`;
}

function partSaid(found: RegExpExecArray, usual: string | undefined, tongue: Tongue): string | undefined {
  const [, whole, decimals, over, under, typedUnit = ""] = found;
  const sign = typedUnit === "" ? (usual ?? "") : typedUnit;
  const unit = tongue.units[sign.toLowerCase()];
  const number = numberSaid(whole, decimals, tongue);
  const fraction = over === undefined ? "" : tongue.fraction(Number(over), Number(under));
  if (fraction === undefined || (whole !== undefined && Number(whole) > MOST)) return undefined;
  const words = [number, fraction].filter((word) => word !== "").join(` ${tongue.and} `);
  if (words === "" || (sign !== "" && unit === undefined)) return undefined;
  if (unit === undefined) return words;
  const isOne = decimals === undefined && (whole === undefined ? true : whole === "1" && over === undefined);
  const counted = decimals === undefined && over === undefined ? tongue.counted(words, unit) : words;
  return `${counted} ${isOne ? unit.one : unit.many}`;
}

/** Signs behind the point are called one by one. */
function numberSaid(whole: string | undefined, decimals: string | undefined, tongue: Tongue): string {
  if (whole === undefined) return "";
  const before = tongue.whole(Number(whole));
  if (decimals === undefined) return before;
  return `${before} ${tongue.point} ${[...decimals].map((sign) => tongue.whole(Number(sign))).join(" ")}`;
}
