import { parseQuantity } from "../engine/quantity/index.ts";
import { unitPlaceOf } from "./answer-question.ts";
import type { CaseFile } from "./case.ts";
import { getAt, stepsOf } from "./path.ts";
import { fieldAt } from "./schema-fields.ts";

/** Units that may stand beside a field, by what is read there; the first is the usual one, in which a bare number is kept. */
export const CHOICES = { length: ["mm", "in"], mass: ["kg", "lb"] } as const;

/** What one device has beside its fields. */
export type UnitsChosen = { readonly [K in keyof typeof CHOICES]: (typeof CHOICES)[K][number] };

export const USUAL_UNITS: UnitsChosen = { length: CHOICES.length[0], mass: CHOICES.mass[0] };

/** The unit that stands beside the field of this path; undefined where none of the device's own does. */
export function unitBeside(path: string, chosen: UnitsChosen): string | undefined {
  const field = fieldAt(path);
  if (field?.kind === "points") return chosen.length;
  return field?.quantity === "length" || field?.quantity === "mass" ? chosen[field.quantity] : undefined;
}

/**
 * What was typed, with the unit that stood beside its field where a hand left it out: so that what is kept says its unit
 * by itself, whatever a device shows later. Numbers in the usual unit stay bare; what is no number stays as it is.
 */
export function withUnitBeside(draft: CaseFile, path: string, typed: string, chosen: UnitsChosen): string {
  const field = fieldAt(path);
  const unit = unitBeside(path, chosen);
  if (unit === undefined || typed.trim() === "") return typed;
  if (field?.kind === "points") return pointsWithUnit(draft, path, typed, unit);
  const kind = field?.quantity === "mass" ? "mass" : "length";
  // Each of several readings of the same thing may be typed with a unit or without.
  return unit === CHOICES[kind][0]
    ? typed
    : typed
        .split(";")
        .map((one) => oneWithUnit(one, kind, unit))
        .join(";");
}

function oneWithUnit(typed: string, kind: keyof UnitsChosen, unit: string): string {
  const parsed = parseQuantity(typed, kind);
  return parsed.ok && !parsed.unitTyped ? `${typed.trim()} ${unit}` : typed;
}

/**
 * A line's unit stands before its points. One that was typed in another unit before is said anew, the usual one too; one that is
 * drawn again is refused then, since what was typed in one unit is not to be read in another.
 */
function pointsWithUnit(draft: CaseFile, path: string, typed: string, unit: string): string {
  if (/^\s*(mm|cm|in)\b/.test(typed)) return typed;
  const stands = getAt(draft, stepsOf(unitPlaceOf(path))) ?? CHOICES.length[0];
  return stands === unit ? typed : `${unit} ${typed.trim()}`;
}
