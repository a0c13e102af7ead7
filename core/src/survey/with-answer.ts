import { z } from "zod";
import { calliperOnBare } from "./calliper-on-bare.ts";
import type { Survey } from "./case.ts";
import { putAt, stepsOf } from "./path.ts";
import { fieldAt } from "./schema-fields.ts";

/**
 * The same survey with one place answered as it would be typed; undefined where that is no answer the place allows, or
 * where it lies in an item of a list that is not there: one reading makes no plate, trace or position.
 */
export function withAnswer(survey: Survey, path: string, typed: number | string): Survey | undefined {
  const field = fieldAt(path);
  const parsed = field && z.core.safeParse(field.schema, typed);
  if (!parsed?.success || !itemsAreThere(survey, stepsOf(path))) return undefined;
  const onBare = survey.saddle.looked.level === "bare" && path.startsWith("saddle.");
  // The place's own schema made the value, so the shape stays that of Survey.
  return putAt(survey, stepsOf(path), onBare ? calliperOnBare(parsed.data) : parsed.data) as Survey;
}

function itemsAreThere(survey: Survey, steps: readonly (string | number)[]): boolean {
  let at: unknown = survey;
  for (const step of steps) {
    if (typeof step === "number" && !(Array.isArray(at) && step < at.length)) return false;
    at = at !== null && typeof at === "object" ? Reflect.get(at, step) : undefined;
  }
  return true;
}
