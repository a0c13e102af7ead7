import { z } from "zod";
import type { QuantityKind } from "../engine/quantity/index.ts";
import { isRead, type Measured } from "./reading.ts";
import { fieldAt } from "./schema-fields.ts";

/** The same thing read more than once: what is taken of it, and between which two all readings lie. In the usual unit of its kind. */
export interface Repeated {
  readonly kind: QuantityKind;
  readonly count: number;
  readonly mean: number;
  readonly least: number;
  readonly most: number;
}

/** Several readings of one measured place, as the case has them; undefined where there is one, or they cannot be read. */
export function repeatedReading(path: string, value: unknown): Repeated | undefined {
  const field = fieldAt(path);
  if (field?.kind !== "measured") return undefined;
  const parsed = z.core.safeParse(field.schema, value);
  // What a measured field's schema gives is a reading, or the word for why there is none.
  const found = parsed.success ? (parsed.data as Measured) : undefined;
  if (found === undefined || !isRead(found) || found.repeats.length < 2) return undefined;
  const { kind, repeats, value: mean } = found;
  return { kind, count: repeats.length, mean, least: Math.min(...repeats), most: Math.max(...repeats) };
}
