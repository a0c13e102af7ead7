import type { Survey } from "./case.ts";
import { getAt, putAt, stepsOf } from "./path.ts";
import type { Measured } from "./reading.ts";
import { fieldAt } from "./schema-fields.ts";

const isMeasured = (value: unknown): value is Measured =>
  typeof value === "object" &&
  value !== null &&
  ("absent" in value || ("instrument" in value && "value" in value));

/** The measured field at a path such as `saddle.head.spreadTips`; undefined where the case has no such reading. */
export function readingAt(survey: Survey, path: string): Measured | undefined {
  const value = getAt(survey, stepsOf(path));
  return isMeasured(value) ? value : undefined;
}

/** The same survey with one reading replaced. A path that is no measured field of this survey is a fault of the caller. */
export function withReading(survey: Survey, path: string, reading: Measured): Survey {
  if (fieldAt(path)?.kind !== "measured" || readingAt(survey, path) === undefined)
    throw new RangeError(`no reading at ${path}`);
  // The walk replaces a measured value by a measured value, so the shape stays that of Survey.
  return putAt(survey, stepsOf(path), reading) as Survey;
}
