import { countryLetters } from "../terms/countries.ts";

/** A horse's number for life (UELN): three figures of the database's country, three signs of the database, nine of the horse. */
export type UelnFault = "not-15-signs" | "no-country" | "horse-too-long" | "strange-sign";
export type TakenUeln =
  | { readonly ok: true; readonly ueln: string }
  | { readonly ok: false; readonly why: UelnFault; readonly allowed: string };

const FRONT = /^[0-9]{3}[0-9A-Z]{3}$/;
const WHOLE = /^[0-9]{3}[0-9A-Z]{3}[0-9A-Z]{9}$/;
const HORSE_SIGNS = 9;

const ALLOWED: { readonly [W in UelnFault]: string } = {
  "not-15-signs":
    "15 signs: three figures, three figures or letters, nine figures or letters. A shorter number of the horse is written after a space behind the first six, and is filled up with zeros",
  "no-country": "the three figures of the database's country in front, and not 000",
  "horse-too-long": "at most nine figures or letters behind the first six",
  "strange-sign": "figures and letters; of other signs only / * ! in a horse's own number behind a space",
};

/** A number as it was typed: whole, or the database's six signs, a space, and the horse's own number. */
export function takeUeln(typed: string): TakenUeln {
  const upper = typed.toUpperCase().trim();
  const whole = upper.replace(/[\s.-]/g, "");
  if (WHOLE.test(whole)) return accepted(whole);
  const [front = "", ...rest] = upper.split(/[\s+]+/);
  const own = rest.join("").replace(/[.-]/g, "");
  if (!FRONT.test(front) || own === "")
    return refused(/^[0-9A-Z]*$/.test(whole) ? "not-15-signs" : "strange-sign");
  return joined(front, own);
}

/** Left-padded with zeros; the signs / * ! become a zero, as the published example has it. Which sign becomes what is the register's to say. */
function joined(front: string, own: string): TakenUeln {
  const plain = own.replace(/[/*!]/g, "0");
  if (!/^[0-9A-Z]+$/.test(plain)) return refused("strange-sign");
  if (plain.length > HORSE_SIGNS) return refused("horse-too-long");
  return accepted(`${front}${plain.padStart(HORSE_SIGNS, "0")}`);
}

function accepted(ueln: string): TakenUeln {
  return ueln.startsWith("000") ? refused("no-country") : { ok: true, ueln };
}

const refused = (why: UelnFault): TakenUeln => ({ ok: false, why, allowed: ALLOWED[why] });

/** What is unusual about a number that is allowed; no general check digit exists. */
export function uelnDoubts(ueln: string): readonly string[] {
  const code = ueln.slice(0, 3);
  return countryLetters(code) === undefined
    ? [`no country has the figures ${code} today: compare the number for life with the passport`]
    : [];
}

/** "276 020 000123456". */
export const uelnShown = (ueln: string): string => `${ueln.slice(0, 3)} ${ueln.slice(3, 6)} ${ueln.slice(6)}`;
