import { U_PER_SD } from "../../engine/central.ts";
import { PI } from "../../engine/number/index.ts";
import { isRead, type Measured, type Reading } from "../../survey/reading.ts";
import type { MeasuredLimit } from "../input.ts";
import type { LimitId } from "../limits/limit-ids.ts";

const DEG_PER_RAD = 180 / PI;

/** A reading with the path at which it stands in the case. */
export interface At {
  readonly path: string;
  readonly measured: Measured;
}

type Place = Pick<MeasuredLimit, "at" | "station" | "side">;
const scale = (reading: Reading): number => (reading.kind === "angle" ? DEG_PER_RAD : 1);
const missingOf = (all: readonly At[]): string[] =>
  all.filter((one) => !isRead(one.measured)).map((one) => one.path);
const lacking = (rule: LimitId, place: Place, all: readonly At[]): MeasuredLimit => ({
  rule,
  ...place,
  value: undefined,
  u: undefined,
  missing: missingOf(all),
});

/** One reading as it stands; own and shared doubt both count. */
export function single(rule: LimitId, place: Place, at: At): MeasuredLimit {
  const { measured } = at;
  if (!isRead(measured)) return lacking(rule, place, [at]);
  const by = scale(measured);
  const sd = Math.sqrt(measured.own * measured.own + measured.shared * measured.shared);
  return { rule, ...place, value: measured.value * by, u: U_PER_SD * sd * by, missing: [] };
}

/** `a` less `b`, both of one kind. What two readings of one instrument share cancels; of two instruments it does not. */
export function difference(rule: LimitId, place: Place, a: At, b: At): MeasuredLimit {
  if (!isRead(a.measured) || !isRead(b.measured)) return lacking(rule, place, [a, b]);
  const [one, other] = [a.measured, b.measured];
  const by = scale(one);
  const apart = one.shared - other.shared;
  const shared =
    one.instrument === other.instrument
      ? apart * apart
      : one.shared * one.shared + other.shared * other.shared;
  const sd = Math.sqrt(one.own * one.own + other.own * other.own + shared);
  return { rule, ...place, value: (one.value - other.value) * by, u: U_PER_SD * sd * by, missing: [] };
}

/** Largest less smallest of several readings of one instrument; the doubt is that of two own parts. */
export function unevenness(rule: LimitId, place: Place, all: readonly At[]): MeasuredLimit {
  const read = all.map((one) => one.measured).filter(isRead);
  if (read.length < all.length || read.length === 0) return lacking(rule, place, all);
  const values = read.map((one) => one.value);
  const own = Math.max(...read.map((one) => one.own));
  return {
    rule,
    ...place,
    value: Math.max(...values) - Math.min(...values),
    u: U_PER_SD * Math.sqrt(2) * own,
    missing: [],
  };
}
