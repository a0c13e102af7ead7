import { z } from "zod";
import { SAID, SEEN, SIGN } from "../terms/knowing.ts";
import { type Field, fullReading, typedValue } from "./field.ts";
import type { Measured } from "./reading.ts";
import { SURVEY_LIMITS } from "./sizes.ts";
import { takeReading } from "./take-reading.ts";

/**
 * A measured field of the case file: a number in the usual unit, text with a unit ("4 1/4 in"),
 * an object with repeats, instrument or uncertainty, or the word for why it is missing.
 */
export function measured(field: Field) {
  return z
    .union([typedValue, fullReading])
    .default("not-looked")
    .transform((typed, context): Measured => takeReading(typed, field, context))
    .meta({
      description: field.about,
      quantity: field.kind,
      lo: field.lo,
      hi: field.hi,
      instrument: field.by,
    });
}

/** One point of a trace or profile, as typed. */
export const pointTyped = z.tuple([typedValue, typedValue]);

/** A question put to a person. */
export const said = (about: string) => z.enum(SAID).default("not-asked").meta({ description: about });
/** A part looked at by eye and hand. */
export const seen = (about: string) => z.enum(SEEN).default("not-looked").meta({ description: about });
/** A sign looked for. */
export const sign = (about: string) => z.enum(SIGN).default("not-looked").meta({ description: about });
/** Free words. */
export const words = (about: string, longest: number = SURVEY_LIMITS.wordsLetters) =>
  z.string().max(longest).default("").meta({ description: about });

/** A length by calliper or ruler, mm. */
export const len = (lo: number, hi: number, about: string, by: "ruler" | "calliper" = "calliper") =>
  measured({ kind: "length", lo, hi, by, about });

/** An angle by protractor, degrees. */
export const deg = (lo: number, hi: number, about: string) =>
  measured({ kind: "angle", lo, hi, by: "protractor", about });
