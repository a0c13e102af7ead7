import { z } from "zod";
import { hashSchema } from "../../records/entry.ts";
import { SURVEY_LIMITS } from "../sizes.ts";

/** Strokes and points of one signature. Working limits, no source: a name drawn by a finger has some 10 strokes of 60 points. */
export const SIGNATURE_LIMITS = {
  strokes: SURVEY_LIMITS.signatureStrokes,
  points: SURVEY_LIMITS.signaturePoints,
  nameLetters: SURVEY_LIMITS.nameLetters,
} as const;

/** Height of the field that is signed in, as part of its width: a name is some three times as long as it is high. Working choice, no source. */
export const SIGNATURE_HIGH = 1 / 3;

/** Who signs: the legal owner, or somebody who acts for the owner. A rider signs for neither. */
export const SIGNS_AS = ["owner", "for-owner"] as const;

/** From left and top of the field, as parts of its width. */
const pointSchema = z.tuple([z.number().min(0).max(1), z.number().min(0).max(1)]);

/** A signature over a text that was shown. Without strokes the name that was typed is the signature. */
export const signatureSchema = z.strictObject({
  /** SHA-256 of the text's UTF-8 bytes. */
  over: hashSchema,
  /** Of the text that was shown (BCP 47). There was English alone before this was kept. */
  language: z
    .string()
    .regex(/^[a-z]{2,3}$/)
    .default("en"),
  by: z.string().min(1).max(SIGNATURE_LIMITS.nameLetters),
  as: z.enum(SIGNS_AS),
  strokes: z.array(z.array(pointSchema).min(1).max(SIGNATURE_LIMITS.points)).max(SIGNATURE_LIMITS.strokes),
});
export type Signature = z.output<typeof signatureSchema>;

/** A signature as it is kept, apart from the entries and erased with its person; undefined where it is none. */
export function signatureIn(kept: unknown): Signature | undefined {
  if (typeof kept !== "string") return undefined;
  try {
    return signatureSchema.safeParse(JSON.parse(kept)).data;
  } catch {
    return undefined;
  }
}
