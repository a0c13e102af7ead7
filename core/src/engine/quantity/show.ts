import { type QuantityKind, type Unit, usualUnit } from "./units.ts";

/** Finest fraction of an inch shown: rules are cut in sixty-fourths. */
const FINEST_FRACTION = 64;
/** Digits after the point when nothing is known of the uncertainty: an exact count, or a figure out of a table. */
const EXACT_DIGITS = 6;

/**
 * A value for reading by people, in `unit`, with no digit that its standard uncertainty does not carry:
 * the last place shown is the largest power of ten (or halving of an inch) not above the uncertainty, so that
 * rounding adds at most half of it. `value` and `uncertainty` in the kept unit; 0 stands for an exact value.
 */
export function show(
  value: number,
  kind: QuantityKind,
  unit: Unit = usualUnit(kind),
  uncertainty = 0,
): string {
  if (!Number.isFinite(value)) return "not a number";
  const number = showNumber(value / unit.times, uncertainty / unit.times, unit.inFractions === true);
  return unit.name === "" ? number : `${number} ${unit.name}`;
}

function showNumber(value: number, uncertainty: number, inFractions: boolean): string {
  if (!(uncertainty > 0)) return trimmed(value.toFixed(EXACT_DIGITS));
  // Finer than the finest fraction, a fraction would round away more than half of the uncertainty.
  if (inFractions && uncertainty < 1 && uncertainty >= 1 / FINEST_FRACTION)
    return showFraction(value, uncertainty);
  let place = 1;
  let decimals = 0;
  while (place > uncertainty && decimals < EXACT_DIGITS) {
    place /= 10;
    decimals += 1;
  }
  while (decimals === 0 && place * 10 <= uncertainty) place *= 10;
  if (decimals > 0) return noMinusZero(value.toFixed(decimals));
  return noMinusZero(String(Math.round(value / place) * place));
}

function showFraction(value: number, uncertainty: number): string {
  let parts = 2;
  while (1 / parts > uncertainty && parts < FINEST_FRACTION) parts *= 2;
  let count = Math.round(Math.abs(value) * parts);
  const whole = Math.floor(count / parts);
  count -= whole * parts;
  while (count > 0 && count % 2 === 0) {
    count /= 2;
    parts /= 2;
  }
  const sign = value < 0 && (whole > 0 || count > 0) ? "-" : "";
  if (count === 0) return `${sign}${whole}`;
  return whole === 0 ? `${sign}${count}/${parts}` : `${sign}${whole} ${count}/${parts}`;
}

const trimmed = (digits: string): string => noMinusZero(digits.replace(/\.?0+$/, ""));
const noMinusZero = (digits: string): string => (Number(digits) === 0 ? digits.replace("-", "") : digits);
