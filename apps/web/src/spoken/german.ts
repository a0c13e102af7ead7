import type { Tongue } from "./tongue.ts";

const SMALL =
  "null ein zwei drei vier fünf sechs sieben acht neun zehn elf zwölf dreizehn vierzehn fünfzehn sechzehn siebzehn achtzehn neunzehn".split(
    " ",
  );
const TENS = "- - zwanzig dreißig vierzig fünfzig sechzig siebzig achtzig neunzig".split(" ");

/** As it stands inside a longer number: one is "ein" there. */
function inside(number: number): string {
  if (number < 20) return SMALL[number] ?? "";
  if (number < 100) {
    const ones = number % 10;
    return `${ones === 0 ? "" : `${SMALL[ones]}und`}${TENS[Math.floor(number / 10)]}`;
  }
  const [size, name] = number < 1000 ? [100, "hundert"] : [1000, "tausend"];
  const rest = number % size;
  return `${inside(Math.floor(number / size))}${name}${rest === 0 ? "" : inside(rest)}`;
}

/** By itself a last one is "eins". */
const whole = (number: number): string => inside(number).replace(/ein$/, "eins");

/** Parts of an inch that rules are cut in. */
const PARTS: Readonly<Record<number, string>> = {
  4: "Viertel",
  8: "Achtel",
  16: "Sechzehntel",
  32: "Zweiunddreißigstel",
  64: "Vierundsechzigstel",
};

function fraction(over: number, under: number): string | undefined {
  if (under === 2) return over === 1 ? "ein halb" : undefined;
  const part = PARTS[under];
  return part === undefined ? undefined : `${inside(over)} ${part}`;
}

const plain = (one: string, many = one) => ({ one, many });
const INCH = plain("Zoll");
const FOOT = plain("Fuß");
const DEGREE = plain("Grad");
const A = "eine";

/** German as ICU spells it out: "einhundertvierundsiebzig". */
export const GERMAN: Tongue = {
  whole,
  minus: "minus",
  stop: ",",
  point: "Komma",
  and: "und",
  fraction,
  counted: (words, { a = "ein" }) => words.replace(/eins$/, a),
  units: {
    mm: plain("Millimeter"),
    cm: plain("Zentimeter"),
    m: plain("Meter"),
    in: INCH,
    '"': INCH,
    ft: FOOT,
    "'": FOOT,
    deg: DEGREE,
    "°": DEGREE,
    kg: plain("Kilogramm"),
    lb: plain("Pfund (lb)"),
    st: plain("Stone"),
    n: plain("Newton"),
    min: { one: "Minute", many: "Minuten", a: A },
    h: { one: "Stunde", many: "Stunden", a: A },
    days: plain("Tag", "Tage"),
    weeks: { one: "Woche", many: "Wochen", a: A },
    months: plain("Monat", "Monate"),
    years: plain("Jahr", "Jahre"),
  },
};
