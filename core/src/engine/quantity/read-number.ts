export type NumberRead =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly asks: string };

const FRACTIONS: { readonly [sign: string]: string } = {
  "¼": "1/4",
  "½": "1/2",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

/** Longest number anyone needs to type; longer text is not looked at. */
const LONGEST = 24;

const plain = (text: string): string =>
  text
    .replace(/[−–]/g, "-")
    .replace(/[¼½¾⅛⅜⅝⅞]/g, (sign) => ` ${FRACTIONS[sign] ?? ""}`)
    .trim();

/**
 * A number as a hand writes it: `8`, `8.5`, `8,5`, `8 1/4`, `8-1/4`, `1/4`, `8¼`, with or without a sign.
 * A comma before exactly three digits could part thousands or decimals: that is asked back, never guessed.
 */
export function readNumber(text: string): NumberRead {
  if (text.length > LONGEST) return { ok: false, asks: `a number has at most ${LONGEST} signs` };
  const tidy = plain(text);
  const mixed = /^([+-]?)(?:(\d+)[ -]+)?(\d+)\/(\d+)$/.exec(tidy);
  if (mixed) return fromFraction(mixed[1] ?? "", mixed[2] ?? "0", mixed[3] ?? "", mixed[4] ?? "");
  const thousands = /^[+-]?([1-9]\d{0,2}),(\d{3})$/.exec(tidy);
  if (thousands) {
    const [, before = "", after = ""] = thousands;
    return {
      ok: false,
      asks: `is that ${before}.${after} or ${before}${after}? Write it with a point, or without the comma`,
    };
  }
  if (/^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/.test(tidy)) return { ok: true, value: Number(tidy.replace(",", ".")) };
  return { ok: false, asks: "a number such as 205, 20.5 or 8 1/4" };
}

function fromFraction(sign: string, whole: string, over: string, under: string): NumberRead {
  const divisor = Number(under);
  if (divisor === 0) return { ok: false, asks: "a fraction that is not divided by nought" };
  const size = Number(whole) + Number(over) / divisor;
  return { ok: true, value: sign === "-" ? -size : size };
}
