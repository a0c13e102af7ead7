import { SIDES, STATIONS } from "../../terms/places.ts";
import type { Judged } from "./judged.ts";
import type { Known } from "./known.ts";

/** Readings that a setting moves by how the whole comes to rest: without a rest before and after there is no difference. */
const MOVED: readonly string[] = [
  "clearance-girthed",
  "clearance-rider-up",
  "clearance-half-seat",
  "clearance-side",
  "seat-slope",
];

/** Height of the bearing at its stations: what decides whether, and which way, a saddle tips. */
export const BEARING_HEIGHTS: readonly string[] = STATIONS.flatMap((station) =>
  SIDES.map((side) => `saddle.bearing.${station}.${side}.underStraightEdge`),
);

const read = (limits: readonly Judged[]): readonly Judged[] =>
  limits.filter(({ rule, value }) => MOVED.includes(rule) && value !== undefined);

/**
 * Whether the calculation refused to bring today's saddle to rest although nothing was missing for it: then no setting
 * has a difference to today, and every reading that moves with the rest is without a value after each of them.
 */
export function aboutRest({ today, tried, lacking }: Known): {
  readonly refused: boolean;
  readonly reread: readonly string[];
} {
  const moving = read(today);
  const refused =
    lacking.length === 0 &&
    moving.length > 0 &&
    tried.length > 0 &&
    tried.every(({ limits }) => read(limits).length === 0);
  return { refused, reread: BEARING_HEIGHTS };
}
