import type { z } from "zod";
import { ABSENT, type Absent } from "../terms/knowing.ts";
import type { Field } from "./typed.ts";
import type { Measured } from "./reading.ts";

type Typed = number | string | { read: number | string | (number | string)[]; by?: string | undefined; uncertainty?: number | string | undefined };

export function takeReading(typed: Typed, field: Field, context: z.RefinementCtx): Measured {
  if (typeof typed === "string" && (ABSENT as readonly string[]).includes(typed)) return { absent: typed as Absent };
  const value = Number(typed);
  if (Number.isFinite(value)) {
    const canonical = field.kind === "angle" ? (value * 3.141592653589793) / 180 : value;
    return { kind: field.kind, value: canonical, own: 1, shared: 0.5, instrument: field.by, typed: String(typed), repeats: [] };
  }
  context.addIssue({ code: "custom", message: "not a reading" });
  return { absent: "unknown" };
}
