import { z } from "zod";
import { sha256Hex } from "../engine/hash.ts";
import { hashSchema, idSchema } from "./entry.ts";
import { RECORD_LIMITS } from "./limits.ts";

/*
 * What tells who somebody is stands apart from the entries, in a store of people, and can be erased there. An entry holds a
 * commitment: whoever has salt and value can check that this is what was said; whoever has not can learn nothing from it.
 */

/** Bytes of chance in a salt: as many as the hash has, so that values cannot be tried out. */
export const SALT_BYTES = 32;

/** What an entry holds in the place of a personal field. */
export const committedSchema = z.strictObject({
  person: idSchema,
  field: z.string().min(1).max(RECORD_LIMITS.fieldLetters),
  commitment: hashSchema,
});
export type Committed = z.output<typeof committedSchema>;

/** What the store of people holds, until it is erased. salt: 64 hexadecimal digits. */
export const heldSchema = z.strictObject({
  person: idSchema,
  field: z.string().min(1).max(RECORD_LIMITS.fieldLetters),
  salt: hashSchema,
  value: z.string().max(RECORD_LIMITS.personLetters),
});
export type Held = z.output<typeof heldSchema>;

/** SHA-256 of the salt's digits and the value. */
export function committed({ person, field, salt, value }: Held): Committed {
  return { person, field, commitment: sha256Hex(new TextEncoder().encode(salt + value)) };
}

/** The value that was committed to, out of what the store still holds; undefined once erased. */
export function revealed(one: Committed, held: readonly Held[]): string | undefined {
  return held.find((other) => other.person === one.person && committed(other).commitment === one.commitment)
    ?.value;
}

/** The store without these fields of one person. */
export const erasedFrom = (
  held: readonly Held[],
  person: string,
  fields: readonly string[],
): readonly Held[] => held.filter((one) => one.person !== person || !fields.includes(one.field));
