import { cos, sin, tan } from "../engine/number/index.ts";
import type { Deviations, Head, Lacking, Section } from "../shape/model.ts";
import { STRAIGHT_BELOW_CROWN_MM } from "../shape/wanted-head.ts";
import { SIDES, type Side } from "../terms/places.ts";

/** The crown is looked for from this far below the top of the back upward, mm. */
const LOWEST_MM = -80;
const HALVINGS = 22;

/**
 * Height of the inside of the crown over the top of the back when the head comes down, upright, until the panel under
 * one of its points touches, in the middle of the point's straight part. `panelMm`: the panel there, square to it.
 *
 * It is geometry without load and without the rest of the tree, and is not the clearance that a hand reads. Its use:
 * a head wanted at this height differs from today's by what the back's angle asks and by nothing else. The path of
 * the trace where it is not deep enough.
 */
export function standsAtMm(
  section: Section,
  head: Head,
  panelMm: number,
  deviations: Deviations,
): number | Lacking {
  const heights = SIDES.map((side) => touchesAt(section, head, side, panelMm, deviations));
  const known = heights.filter((height) => height !== undefined);
  return known.length < heights.length ? { lacking: ["traces.front.points"] } : Math.max(...known);
}

function touchesAt(
  section: Section,
  head: Head,
  side: Side,
  panelMm: number,
  deviations: Deviations,
): number | undefined {
  const halfAngle = head.halfAngleRad[side];
  const upMm = (head.depthMm - STRAIGHT_BELOW_CROWN_MM) / 2;
  const outMm = head.spreadMm / 2 - upMm * tan(halfAngle) - panelMm * cos(halfAngle);
  const widthAt = (crownMm: number) => {
    const depth = head.depthMm - crownMm - upMm + panelMm * sin(halfAngle);
    return depth <= 0 ? 0 : section.halfWidthMm(side, depth, deviations);
  };
  // The higher the crown, the narrower the back at the point: below the trace's end it is taken as wide enough.
  let [lo, hi] = [LOWEST_MM, head.depthMm + panelMm];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (lo + hi) / 2;
    if ((widthAt(middle) ?? Number.POSITIVE_INFINITY) > outMm) lo = middle;
    else hi = middle;
  }
  return widthAt(lo) === undefined ? undefined : hi;
}
