import { z } from "zod";
import type { Survey } from "./case.ts";
import { putAt, stepsOf } from "./path.ts";
import { fieldAt } from "./schema-fields.ts";

/** The same survey with one place answered as it would be typed; undefined where that is no answer the place allows. */
export function withAnswer(survey: Survey, path: string, typed: number | string): Survey | undefined {
  const field = fieldAt(path);
  const parsed = field && z.core.safeParse(field.schema, typed);
  // The place's own schema made the value, so the shape stays that of Survey.
  return parsed?.success ? (putAt(survey, stepsOf(path), parsed.data) as Survey) : undefined;
}
