import type { Point } from "./crossing.ts";
import { extents, type Fault, fault, inUnit, tooSmall, type Unit } from "./outline-fault.ts";

/** Plausible midlines in mm (assumptions). */
const PROFILE_LENGTH_MM = [150, 1300] as const;
const PROFILE_HEIGHT_MOST_MM = 350;

/** The midline from the front station backward: x grows from point to point. */
export function checkProfile(points: readonly Point[], unit: Unit): readonly Fault[] {
  const back = points.findIndex((point, at) => at > 0 && point[0] <= (points[at - 1]?.[0] ?? 0));
  if (back > 0)
    return [
      fault(
        `x ${inUnit(points[back]?.[0] ?? 0, unit)}`,
        "x growing from point to point, from the front station backward",
        [back],
      ),
    ];
  const [length, height] = extents(points);
  if (length < PROFILE_LENGTH_MM[0]) return [tooSmall(length, unit, "long", PROFILE_LENGTH_MM)];
  if (length > PROFILE_LENGTH_MM[1])
    return [fault(`${inUnit(length, unit)} long`, `at most ${inUnit(PROFILE_LENGTH_MM[1], unit)} long`)];
  if (height <= PROFILE_HEIGHT_MOST_MM) return [];
  return [
    fault(
      `${inUnit(height, unit)} from lowest to highest`,
      `at most ${inUnit(PROFILE_HEIGHT_MOST_MM, unit)}`,
    ),
  ];
}
