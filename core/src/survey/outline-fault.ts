import { show, unitCalled } from "../engine/quantity/index.ts";
import type { Point } from "./crossing.ts";

/** Something wrong with typed points: where within them, what was read (in words, or as typed), what is allowed. */
export type Fault = { readonly at: readonly (string | number)[]; readonly allowed: string } & (
  | { readonly read: string }
  | { readonly typed: unknown }
);
export type Unit = "mm" | "cm" | "in";

export const fault = (read: string, allowed: string, at: readonly (string | number)[] = []): Fault => ({
  at,
  read,
  allowed,
});

/** Whole mm, or sixteenths of an inch. */
export const inUnit = (mm: number, unit: Unit): string =>
  show(mm, "length", unitCalled(unit, "length"), unit === "in" ? 1.6 : 1);

export function tooSmall(
  lengthMm: number,
  unit: Unit,
  way: string,
  [lo, hi]: readonly [number, number],
): Fault {
  const asks =
    unit === "mm"
      ? `is the unit inches or cm? Then write "unit": "in" or "unit": "cm"`
      : "is the unit right?";
  return fault(
    `${inUnit(lengthMm, unit)} ${way}`,
    `${inUnit(lo, unit)} to ${inUnit(hi, unit)} ${way}; ${asks}`,
  );
}

/** Width and height of all points together. */
export function extents(points: readonly Point[]): readonly [number, number] {
  const along = points.map((point) => point[0]);
  const up = points.map((point) => point[1]);
  return [Math.max(...along) - Math.min(...along), Math.max(...up) - Math.min(...up)];
}
