/** A unit in words: one of it, more of it, and the word for one before it. */
export interface UnitWords {
  readonly one: string;
  readonly many: string;
  /** What "one" becomes before it, where that is another word. */
  readonly a?: string;
}

/** How one language says figures. Whole numbers from 0 to 999 999. */
export interface Tongue {
  readonly whole: (number: number) => string;
  readonly minus: string;
  /** The sign before decimals, and how it is called. */
  readonly stop: "." | ",";
  readonly point: string;
  readonly and: string;
  /** "three eighths"; undefined for parts that no rule is cut in. */
  readonly fraction: (over: number, under: number) => string | undefined;
  /** The last word of a number before what is counted: German says "ein" and "eine" there. */
  readonly counted: (words: string, unit: UnitWords) => string;
  /** By their signs as typed, in small letters. */
  readonly units: Readonly<Record<string, UnitWords>>;
}
