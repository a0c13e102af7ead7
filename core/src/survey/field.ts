import { z } from "zod";
import { INSTRUMENTS, type Instrument } from "../terms/instruments.ts";
import type { QuantityKind } from "./reading.ts";
import { SURVEY_LIMITS } from "./sizes.ts";

/** What a field may hold: kind, the allowed range in the canonical unit shown to people (mm, degrees, kg, N), its usual instrument. */
export interface Field {
  readonly kind: QuantityKind;
  /** Lowest allowed value, in mm, degrees, kg, N, count, minutes, years or weeks. */
  readonly lo: number;
  readonly hi: number;
  readonly by: Instrument;
  readonly about: string;
}

export const typedValue = z.union([z.number(), z.string()]);
/** A reading with its repeats, instrument or uncertainty. */
export const fullReading = z.strictObject({
  read: z.union([typedValue, z.array(typedValue).min(1).max(SURVEY_LIMITS.readings)]),
  by: z.enum(INSTRUMENTS).optional(),
  uncertainty: typedValue.optional(),
});
export type TypedReading = number | string | z.output<typeof fullReading>;
