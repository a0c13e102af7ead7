import { z } from "zod";
import { hashSchema, idSchema } from "./entry.ts";
import { RECORD_LIMITS } from "./limits.ts";

/*
 * Kinds that a graph itself needs. What else is said is a statement: a value at a place of the subject. What the places mean,
 * and what may stand there, is known by the room that reads them.
 */

/** A value at a place. Without a value the place was cleared: it was said to hold nothing. */
export const STATED = "stated";
export const statedSchema = z.strictObject({
  at: z.string().min(1).max(RECORD_LIMITS.atLetters),
  value: z.json().optional(),
});

/** Entries that no longer count: an undo, a slip of the hand, a reading of another subject. Taking back one of these lets them count again. */
export const TAKEN_BACK = "taken-back";
export const takenBackSchema = z.strictObject({
  of: z.array(hashSchema).min(1).max(RECORD_LIMITS.takenBack),
  why: z.string().max(RECORD_LIMITS.whyLetters),
});

/** A person's fields are gone from the person store; what had been committed to stays unreadable. */
export const ERASED = "erased";
export const erasedSchema = z.strictObject({
  person: idSchema,
  fields: z.array(z.string().min(1).max(RECORD_LIMITS.fieldLetters)).min(1),
});

export type Stated = z.output<typeof statedSchema>;
export type TakenBack = z.output<typeof takenBackSchema>;

/** One kind of entry: its newest version, what its body holds there, and a step from each version to the next. */
export interface Kind {
  readonly kind: string;
  readonly version: number;
  readonly schema: z.ZodType;
  readonly steps: readonly ((body: Body) => Body)[];
}
export type Body = { readonly [name: string]: unknown };

export const GRAPH_KINDS: readonly Kind[] = [
  { kind: STATED, version: 1, schema: statedSchema, steps: [] },
  { kind: TAKEN_BACK, version: 1, schema: takenBackSchema, steps: [] },
  { kind: ERASED, version: 1, schema: erasedSchema, steps: [] },
];
