/** Ids of the limit rules. Values: those marked C are computed by the road, the others measured off the survey. */
export const LIMIT_IDS = [
  "clearance-girthed",
  "clearance-rider-up",
  "clearance-half-seat",
  "clearance-side",
  "channel-over-ridge",
  "channel-width",
  "girth-groove",
  "face-front", // C: degrees, tree less back, positive = tree steeper (tight at the tip); station front, per side
  "face-rail", // C: degrees, as above; stations mid and rear, per side
  "spread-wanted", // C: mm, spread inside the tips less the wanted spread of this horse's template
  "feeler",
  "bridge",
  "rock",
  "seat-slope",
  "saddle-panel-sides",
  "saddle-point-lengths",
  "saddle-half-angles",
  "saddle-diagonals-dressed",
  "saddle-diagonals-bare",
  "saddle-bench-rock",
  "saddle-string",
  "horse-sides-angle", // C: degrees, near less off, at the front 60 to 90 mm down
  "horse-sides-width", // C: mm, near less off, at the front 60 to 90 mm down
  "hollow",
  "side-offset",
  "point-behind-blade",
  "panel-rear-edge",
  "fill",
  "pressure-head-walk", // C: kPa, mean of the front third at walk, per side; handed over only where it closes
  "ridge-touch", // C: cm2 of the panels that press on the ridge in any gait; handed over only where it closes
] as const;
export type LimitId = (typeof LIMIT_IDS)[number];
