import { z } from "zod";
import { caseSchema } from "./case.ts";
import { jobSchema } from "./job.ts";
import { stockSchema } from "./stock.ts";

/** JSON Schema (draft 2020-12) of the file as typed. Units, ranges of readings and outlines are checked beyond it. */
export function caseJsonSchema(): object {
  return z.toJSONSchema(caseSchema, { io: "input" });
}

/** The same of a stock of plates. */
export function stockJsonSchema(): object {
  return z.toJSONSchema(stockSchema, { io: "input" });
}

/** The same of a job at the press. */
export function jobJsonSchema(): object {
  return z.toJSONSchema(jobSchema, { io: "input" });
}
