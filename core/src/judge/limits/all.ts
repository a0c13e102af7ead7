import { BEARING } from "./bearing.ts";
import { CLEARANCE } from "./clearance.ts";
import { FORM } from "./form.ts";
import type { Limit } from "./make.ts";
import { PLACE } from "./place.ts";
import { PRESSED } from "./pressed.ts";
import { SQUARE } from "./square.ts";

/** Every limit, in the order of the work. */
export const LIMITS: readonly Limit[] = [...SQUARE, ...CLEARANCE, ...PLACE, ...FORM, ...BEARING, ...PRESSED];

/** The rule of an id; an id that is not there is a fault of the caller. */
export function limitRule(id: string): Limit {
  const rule = LIMITS.find((one) => one.id === id);
  if (rule === undefined) throw new Error(`no limit rule "${id}"`);
  return rule;
}
