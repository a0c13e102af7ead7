import { z } from "zod";
import type { CaseFile, Trace } from "../survey/case.ts";
import { getAt, stepsOf } from "../survey/path.ts";
import { fieldAt } from "../survey/schema-fields.ts";
import { meanTrace } from "./trace-curve.ts";

/** How often one tracing was drawn, and how far a drawing strays from their mean: the standard deviation across the curve, mm. */
export interface DrawnAgain {
  readonly drawings: number;
  readonly spreadMm: number;
}

/**
 * The drawings of the tracing at this path (`horses[0].traces[0]`). Undefined where it was drawn once or not at all; "points" or
 * "repeats" names what cannot be used: the lines do not cross the midline, or were not drawn in one unit.
 */
export function drawnAgain(file: CaseFile, tracePath: string): DrawnAgain | "points" | "repeats" | undefined {
  // A midline is drawn once: only tracings across the back have repeats.
  if (!/\.traces\[\d+\]$/.test(tracePath)) return undefined;
  const schema = fieldAt(tracePath)?.schema;
  const parsed = schema && z.core.safeParse(schema, getAt(file, stepsOf(tracePath)));
  if (!parsed?.success) return undefined;
  // What the schema of a trace has read is one.
  const trace = parsed.data as Trace;
  if (trace.repeats.length === 0) return undefined;
  const mean = meanTrace([trace]);
  return typeof mean === "string" ? mean : { drawings: mean.repeats, spreadMm: mean.spreadMm };
}
