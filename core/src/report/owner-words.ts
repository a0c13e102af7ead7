import { HORSE_ANSWERS, SADDLE_ANSWERS, WORK_ANSWERS } from "../terms/answers.ts";

/** A sentence that must not stand in an owner's letter. */
export class LetterRefused extends Error {
  readonly place: string;
  readonly found: string;
  constructor(place: string, found: string, why: string) {
    super(`the letter's part "${place}" has "${found}": ${why}`);
    this.name = "LetterRefused";
    this.place = place;
    this.found = found;
  }
}

/** Ids with a hyphen never stand in plain English, but for "set-up", which is a word of the trade. */
const IDS = [...HORSE_ANSWERS, ...SADDLE_ANSWERS, ...WORK_ANSWERS].filter(
  (id) => id.includes("-") && id !== "set-up",
);

/** Common practice, no source: an owner is promised nothing, given no figure to press or heat by, and told no diagnosis. */
const NEVER: readonly { readonly pattern: RegExp; readonly why: string }[] = [
  { pattern: /\bkPa\b|\bkilopascals?\b/i, why: "pressures are not told to an owner" },
  { pattern: /\bsafe(ly|ty)?\b/i, why: "nobody can promise that" },
  {
    pattern: /\d\s*(kN|N|bar|°\s?C|degrees C(elsius)?)(?![a-z])/i,
    why: "no press or heat figure stands in a letter",
  },
  {
    pattern:
      /\bback pain\b|\barthrit\w*|\bkissing spines?\b|\bsacroiliac\b|\bulcers?\b|\blaminitis\b|\bnavicular\b/i,
    why: "a diagnosis is a vet's",
  },
  // The same in German, the other language of a letter.
  { pattern: /\b(un)?sicher(e[mnrs]?|heit)?\b|\bungefährlich\w*/i, why: "nobody can promise that" },
  { pattern: /\d\s*Grad (C|Celsius)/i, why: "no press or heat figure stands in a letter" },
  {
    pattern: /\bRückenschmerz\w*|\bArthros\w*|\bMagengeschwür\w*|\bHufrehe\b|\bHufrolle\w*/i,
    why: "a diagnosis is a vet's",
  },
  { pattern: new RegExp(`\\b(${IDS.join("|")})\\b`), why: "it is an id of the program and not English" },
];

/** Throws LetterRefused where a sentence says what an owner is never told. Names of horse and saddle are left aside. */
export function refuseOwnerWords(place: string, said: string, names: readonly string[]): void {
  const without = names
    .filter((name) => name !== "")
    .reduce((text, name) => text.split(name).join(" "), said);
  for (const { pattern, why } of NEVER) {
    const found = pattern.exec(without);
    if (found) throw new LetterRefused(place, found[0], why);
  }
}
