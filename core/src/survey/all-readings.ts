import type { Survey } from "./case.ts";
import { pathOf } from "./path.ts";
import type { Reading } from "./reading.ts";

export interface PlacedReading {
  readonly path: string;
  readonly reading: Reading;
}

const isReading = (value: object): value is Reading => "instrument" in value && "typed" in value;

function within(value: unknown, steps: readonly (string | number)[]): PlacedReading[] {
  if (typeof value !== "object" || value === null) return [];
  if (isReading(value)) return [{ path: pathOf(steps), reading: value }];
  // Points are coordinates, not readings, and there are thousands of them.
  if (Array.isArray(value))
    return value.flatMap((item, at) => (Array.isArray(item) ? [] : within(item, [...steps, at])));
  return Object.entries(value).flatMap(([name, inner]) => within(inner, [...steps, name]));
}

/** Every reading that was taken, with its path, in the order of the schema. */
export const allReadings = (survey: Survey): PlacedReading[] => within(survey, []);
