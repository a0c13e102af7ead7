import type { LimitId } from "../judge/limits/limit-ids.ts";

/** Short names of the limits, for a row of a table. A difference says which is taken from which. */
export const LIMIT_NAMES: { readonly [L in LimitId]: string } = {
  "clearance-girthed": "clearance, girthed",
  "clearance-rider-up": "clearance, rider up",
  "clearance-half-seat": "clearance, half-seat",
  "clearance-side": "clearance beside",
  "channel-over-ridge": "channel less ridge",
  "channel-width": "channel",
  "girth-groove": "girth line behind groove",
  "face-front": "point's face less back's",
  "face-rail": "rail's face less back's",
  "spread-wanted": "spread less wanted",
  feeler: "feeler uneven by",
  bridge: "gap under the middle",
  rock: "rock by hand",
  "seat-slope": "slope of the seat",
  "saddle-panel-sides": "panel, near less off",
  "saddle-point-lengths": "point lengths, near less off",
  "saddle-half-angles": "half-angles, near less off",
  "saddle-diagonals-dressed": "diagonals apart, dressed",
  "saddle-diagonals-bare": "diagonals apart, bare",
  "saddle-bench-rock": "rock on the bench",
  "saddle-string": "string off the seat's line",
  "horse-sides-angle": "horse's sides, angle",
  "horse-sides-width": "horse's sides, width",
  hollow: "hollow behind shoulder",
  "side-offset": "offset when ridden",
  "point-behind-blade": "point behind blade",
  "panel-rear-edge": "panel before last rib",
  fill: "fill needed",
  "pressure-head-walk": "mean pressure under the head, walk",
  "ridge-touch": "panels pressing on the ridge",
};

/** The name with its place. */
export function limitName(rule: string, at: string): string {
  const name = Object.entries(LIMIT_NAMES).find(([id]) => id === rule)?.[1] ?? rule;
  return at === "" ? name : `${name}, ${at}`;
}
