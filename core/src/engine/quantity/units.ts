import { PI } from "../number/index.ts";

/** Kinds of quantity and the one unit each is kept in. */
export const CANONICAL = {
  length: "mm",
  angle: "rad",
  mass: "kg",
  force: "N",
  count: "1",
  time: "min",
  age: "years",
  weeks: "weeks",
} as const;
export type QuantityKind = keyof typeof CANONICAL;

/** One unit a hand may type. `times` turns it into the kept unit. */
export interface Unit {
  readonly name: string;
  readonly words: readonly string[];
  readonly times: number;
  /** Shown in halves, quarters, eighths ... instead of decimals. */
  readonly inFractions?: true;
}

/** published: International Yard and Pound Agreement 1959: 1 in = 25.4 mm, 1 ft = 304.8 mm, 1 lb = 0.45359237 kg, all exact. */
const INCH_MM = 25.4;
const FOOT_MM = 304.8;
const POUND_KG = 0.45359237;
/** published: CGPM 1901, standard acceleration of free fall, m/s2, exact. */
const STANDARD_GRAVITY = 9.80665;

/** The first unit of each kind is the usual one: a bare number is in it. */
export const UNITS: { readonly [K in QuantityKind]: readonly [Unit, ...Unit[]] } = {
  length: [
    { name: "mm", words: ["mm", "millimetre", "millimetres", "millimeter", "millimeters"], times: 1 },
    { name: "cm", words: ["cm", "centimetre", "centimetres", "centimeter", "centimeters"], times: 10 },
    { name: "m", words: ["m", "metre", "metres", "meter", "meters"], times: 1000 },
    {
      name: "in",
      words: ["in", "in.", "inch", "inches", '"', "″", "”", "''"],
      times: INCH_MM,
      inFractions: true,
    },
    { name: "ft", words: ["ft", "ft.", "foot", "feet", "'", "′", "’"], times: FOOT_MM },
  ],
  angle: [
    { name: "deg", words: ["deg", "deg.", "degree", "degrees", "°"], times: PI / 180 },
    { name: "arc minutes", words: ["'", "′", "’"], times: PI / 10800 },
  ],
  mass: [
    { name: "kg", words: ["kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"], times: 1 },
    { name: "lb", words: ["lb", "lb.", "lbs", "pound", "pounds"], times: POUND_KG },
    { name: "st", words: ["st", "st.", "stone", "stones"], times: 14 * POUND_KG },
  ],
  force: [
    { name: "N", words: ["n", "newton", "newtons"], times: 1 },
    { name: "kN", words: ["kn"], times: 1000 },
    { name: "kgf", words: ["kgf"], times: STANDARD_GRAVITY },
    { name: "lbf", words: ["lbf"], times: POUND_KG * STANDARD_GRAVITY },
  ],
  count: [{ name: "", words: [], times: 1 }],
  time: [
    { name: "min", words: ["min", "min.", "mins", "minute", "minutes"], times: 1 },
    { name: "h", words: ["h", "hr", "hrs", "hour", "hours"], times: 60 },
    { name: "days", words: ["d", "day", "days"], times: 1440 },
  ],
  age: [
    { name: "years", words: ["y", "yr", "yrs", "year", "years"], times: 1 },
    { name: "months", words: ["month", "months"], times: 1 / 12 },
  ],
  weeks: [
    { name: "weeks", words: ["w", "wk", "wks", "week", "weeks"], times: 1 },
    { name: "days", words: ["d", "day", "days"], times: 1 / 7 },
  ],
};

export const usualUnit = (kind: QuantityKind): Unit => UNITS[kind][0];

/** The unit a word names within a kind, or undefined. Case does not matter. */
export function unitCalled(word: string, kind: QuantityKind): Unit | undefined {
  const lower = word.toLowerCase();
  return UNITS[kind].find((unit) => unit.words.includes(lower));
}
