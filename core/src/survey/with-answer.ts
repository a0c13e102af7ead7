import { z } from "zod";
import { calliperOnBare } from "./calliper-on-bare.ts";
import type { Survey } from "./case.ts";
import { putAt, stepsOf } from "./path.ts";
import { fieldAt } from "./schema-fields.ts";

/** The same survey with one place answered as it would be typed; undefined where that is no answer the place allows. */
export function withAnswer(survey: Survey, path: string, typed: number | string): Survey | undefined {
  const field = fieldAt(path);
  const parsed = field && z.core.safeParse(field.schema, typed);
  if (!parsed?.success) return undefined;
  const onBare = survey.saddle.looked.level === "bare" && path.startsWith("saddle.");
  // The place's own schema made the value, so the shape stays that of Survey.
  return putAt(survey, stepsOf(path), onBare ? calliperOnBare(parsed.data) : parsed.data) as Survey;
}
