import { z } from "zod";
import { hashed } from "./hashed.ts";
import { RECORD_LIMITS } from "./limits.ts";

/*
 * One thing that was said, once and for good. Nothing in it is ever changed: what turns out wrong is said anew or taken back,
 * by a further entry.
 */

/** 64 lower-case hexadecimal digits. */
export const hashSchema = z.string().regex(/^[0-9a-f]{64}$/);
/** Published: RFC 9562 (2024), lower case. */
export const idSchema = z
  .string()
  .regex(/^[0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
const orderedIdSchema = z
  .string()
  .regex(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);

const sortedOnce = (hashes: readonly string[]): boolean =>
  hashes.every((hash, at) => at === 0 || String(hashes[at - 1]) < hash);

const unsealed = {
  /** UUID version 7, made where the entry was written. */
  id: orderedIdSchema,
  /** What the entry is about: everything said of one subject is one graph. */
  subject: idSchema,
  kind: z
    .string()
    .regex(/^[a-z]+(-[a-z]+)*$/)
    .max(RECORD_LIMITS.kindLetters),
  /** Version of the kind's body. */
  version: z.int().min(1),
  author: idSchema,
  device: idSchema,
  /** What the writer's clock said, in UTC. A statement: clocks are wrong by an hour or a year, so nothing is ever decided by it. */
  saidAt: z.iso.datetime({ precision: 3 }),
  /** Time zone of the place, by its name in the IANA data base. */
  zone: z
    .string()
    .regex(/^[A-Za-z][A-Za-z0-9_+/-]*$/)
    .max(RECORD_LIMITS.zoneLetters),
  /** Hashes of the entries of this subject that the writer had seen and that no other of those was written after. In order. */
  after: z.array(hashSchema).max(RECORD_LIMITS.after).refine(sortedOnce),
  body: z.record(z.string(), z.json()),
};

export const unsealedSchema = z.strictObject(unsealed);
export const entrySchema = z.strictObject({ ...unsealed, hash: hashSchema });
export type Unsealed = z.output<typeof unsealedSchema>;
export type Entry = z.output<typeof entrySchema>;

/** The entry with its hash: SHA-256 of the canonical JSON (RFC 8785) of all else in it. */
export function sealed(entry: Unsealed): Entry {
  const checked = unsealedSchema.parse(entry);
  return { ...checked, hash: hashed(checked) };
}

/** Whether the hash is that of the rest. */
export function isWhole({ hash, ...rest }: Entry): boolean {
  return hash === hashed(rest);
}
