import type { Tongue } from "./tongue.ts";

const SMALL =
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const TENS = "- - twenty thirty forty fifty sixty seventy eighty ninety".split(" ");

function whole(number: number): string {
  if (number < 20) return SMALL[number] ?? "";
  if (number < 100) {
    const ones = number % 10;
    return `${TENS[Math.floor(number / 10)]}${ones === 0 ? "" : `-${SMALL[ones]}`}`;
  }
  const [size, name] = number < 1000 ? [100, "hundred"] : [1000, "thousand"];
  const rest = number % size;
  return `${whole(Math.floor(number / size))} ${name}${rest === 0 ? "" : ` ${whole(rest)}`}`;
}

/** Parts of an inch that rules are cut in. */
const PARTS: Readonly<Record<number, string>> = {
  2: "half",
  4: "quarter",
  8: "eighth",
  16: "sixteenth",
  32: "thirty-second",
  64: "sixty-fourth",
};

function fraction(over: number, under: number): string | undefined {
  const part = PARTS[under];
  if (part === undefined) return undefined;
  return `${whole(over)} ${over === 1 ? part : part === "half" ? "halves" : `${part}s`}`;
}

const plain = (one: string, many = `${one}s`) => ({ one, many });
const INCH = plain("inch", "inches");
const FOOT = plain("foot", "feet");
const DEGREE = plain("degree");

/** English as ICU spells it out: "one hundred seventy-four", without an "and". */
export const ENGLISH: Tongue = {
  whole,
  minus: "minus",
  stop: ".",
  point: "point",
  and: "and",
  fraction,
  counted: (words) => words,
  units: {
    mm: plain("millimetre"),
    cm: plain("centimetre"),
    m: plain("metre"),
    in: INCH,
    '"': INCH,
    ft: FOOT,
    "'": FOOT,
    deg: DEGREE,
    "°": DEGREE,
    kg: plain("kilogram"),
    lb: plain("pound"),
    st: plain("stone", "stone"),
    n: plain("newton"),
    min: plain("minute"),
    h: plain("hour"),
    days: plain("day"),
    weeks: plain("week"),
    months: plain("month"),
    years: plain("year"),
  },
};
