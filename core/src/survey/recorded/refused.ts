import type { SizeLimit } from "../../records/limits.ts";
import type { Problem } from "../problem.ts";
import { SURVEY_SIZES } from "../sizes.ts";
import { OF_VISIT } from "./places.ts";

const SAID: readonly string[] = [
  OF_VISIT.agreedWork,
  OF_VISIT.agreedRisks,
  OF_VISIT.agreedWorse,
  OF_VISIT.agreedLimit,
  OF_VISIT.done,
];

/** Why something is not said of a visit beside its case: where, what was read, what is allowed. Undefined where it may be said. */
export function refusedOfVisit(at: string, value: string | number): Problem | undefined {
  if (at === OF_VISIT.nextInWeeks)
    return isWhole(value, SURVEY_SIZES.weeks) ? undefined : refusal(at, String(value), SURVEY_SIZES.weeks);
  if (SAID.includes(at)) return tooLong(at, String(value), SURVEY_SIZES.saidLetters);
  return undefined;
}

/** Why a horse is not called so. */
export const refusedName = (name: string): Problem | undefined =>
  tooLong("horses[0].name", name, SURVEY_SIZES.nameLetters);

function tooLong(where: string, text: string, size: SizeLimit): Problem | undefined {
  return text.length > size.most ? refusal(where, `${text.length} ${size.unit}`, size) : undefined;
}

const isWhole = (value: string | number, { least = 0, most }: SizeLimit): boolean =>
  typeof value === "number" && Number.isInteger(value) && value >= least && value <= most;

const refusal = (where: string, read: string, { least, most, unit }: SizeLimit): Problem => ({
  where,
  read,
  allowed: least === undefined ? `at most ${most} ${unit}` : `${least} to ${most} ${unit}`,
});

/** Why a file is too large to be taken in as a picture; undefined where it is not. */
export function refusedPhotoFile(bytes: number): Problem | undefined {
  const size = SURVEY_SIZES.photoFileBytes;
  return bytes > size.most ? refusal("photos", `${bytes} ${size.unit}`, size) : undefined;
}
