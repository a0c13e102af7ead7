import { show, usualUnit } from "../../engine/quantity/index.ts";
import { whereOf } from "../problem.ts";
import { isRead, type Measured, type Reading } from "../reading.ts";

/** Something to look at again. It stops nothing. */
export interface Flag {
  readonly where: string;
  readonly says: string;
}

export const flag = (path: string, says: string): Flag => ({ where: whereOf(path), says });

/** The reading, or undefined when it is missing. */
export const read = (measured: Measured): Reading | undefined => (isRead(measured) ? measured : undefined);

/** Whole mm or degrees for a sentence. */
export const about = (value: number, kind: "length" | "angle" = "length"): string =>
  show(value, kind, usualUnit(kind), usualUnit(kind).times);
