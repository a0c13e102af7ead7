import { countryLetters } from "../terms/countries.ts";

/** A transponder's number (ISO 11784): three figures for country or maker, twelve for the animal. */
export interface Transponder {
  readonly code: string;
  readonly individual: string;
}

/** Why a number cannot be a horse's transponder. */
export type TransponderFault = "not-15-figures" | "no-country" | "test-code" | "over-38-bits";
export type TakenTransponder =
  | { readonly ok: true; readonly transponder: Transponder }
  | { readonly ok: false; readonly why: TransponderFault; readonly allowed: string };

/** The animal's part has 38 bits (ISO 11784); anything above fits twelve figures and no chip. Derived. */
const INDIVIDUAL_BITS = 38n;
const INDIVIDUAL_MOST = (1n << INDIVIDUAL_BITS) - 1n;
/** Maker's codes begin here; 900 is shared by several makers, 999 is for tests only (the register of makers' codes; upper bound 998 from memory). */
const FIRST_MAKER = 900;
const SHARED = "900";
const TEST = "999";

const ALLOWED: { readonly [W in TransponderFault]: string } = {
  "not-15-figures":
    "15 figures, three for the country or the maker and twelve for the animal; spaces, dots and hyphens may stand between",
  "no-country": "a country's three figures from 001 to 899, or a maker's from 900 to 998, in front",
  "test-code": "another number than one that begins with 999: those are for tests and stand in no horse",
  "over-38-bits": `an animal's number of at most ${INDIVIDUAL_MOST} in the last twelve figures (38 bits)`,
};

/** A number as it was typed or scanned. Nothing is made good: what cannot be a transponder's number is refused with the reason. */
export function takeTransponder(typed: string): TakenTransponder {
  const figures = typed.replace(/[\s.-]/g, "");
  if (!/^\d{15}$/.test(figures)) return refused("not-15-figures");
  const [code, individual] = [figures.slice(0, 3), figures.slice(3)];
  if (code === "000") return refused("no-country");
  if (code === TEST) return refused("test-code");
  if (BigInt(individual) > INDIVIDUAL_MOST) return refused("over-38-bits");
  return { ok: true, transponder: { code, individual } };
}

const refused = (why: TransponderFault): TakenTransponder => ({ ok: false, why, allowed: ALLOWED[why] });

/** What is unusual about a number that is allowed; empty where nothing is. None of it is held against the horse. */
export function transponderDoubts({ code }: Transponder): readonly string[] {
  if (code === SHARED)
    return [
      "the chip's number begins with 900, which several makers share: legal in an older horse, and its country is not told",
    ];
  if (Number(code) >= FIRST_MAKER)
    return [
      `the chip's number begins with a maker's code (${code}): legal in an older horse, and its country is not told`,
    ];
  if (countryLetters(code) === undefined)
    return [
      `no country has the figures ${code} today: read the chip once more, or compare with the passport`,
    ];
  return [];
}

/** The 64 bits that the chip holds, most significant first, as 16 hexadecimal signs: animal flag set, reserved bits and data flag clear (ISO 11784). */
export function transponderFrame({ code, individual }: Transponder): string {
  const animal = 1n << 63n;
  const bits = animal | (BigInt(code) << INDIVIDUAL_BITS) | BigInt(individual);
  return bits.toString(16).toUpperCase();
}

/** "276 000000012345". */
export const transponderShown = ({ code, individual }: Transponder): string => `${code} ${individual}`;
