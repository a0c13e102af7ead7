import type { Trace } from "../survey/case.ts";
import type { BySide, Side, Station } from "../terms/places.ts";
import { lastKept } from "./last-kept.ts";
import type { Deviations, Section, Uncertain } from "./model.ts";
import { NODES, type SideForm, type SideShift, shiftedSide, sideForm } from "./side-form.ts";
import { faceAngle, halfWidth } from "./side-reading.ts";
import { meanTrace } from "./trace-curve.ts";
import {
  SHARED_TILT,
  SHARED_WIDTH,
  type Temper,
  type TraceIds,
  traceDoubt,
  traceIds,
} from "./trace-doubt.ts";

/** A section with the nodes of its two sides, for lofting. */
export interface FormedSection {
  readonly section: Section;
  readonly sides: BySide<SideForm>;
  readonly ids: TraceIds;
}

/** What the deviations do to one side. The curve's shared error widens both sides by half each, and tilts both. */
export function shiftOf(ids: TraceIds, side: Side, deviations: Deviations): SideShift {
  return {
    widthMm: (deviations[ids.width[side]] ?? 0) + (deviations[SHARED_WIDTH] ?? 0) / 2,
    tiltRad: (deviations[ids.tilt[side]] ?? 0) + (deviations[SHARED_TILT] ?? 0),
  };
}

/**
 * The section that all drawings of one place make together. `traces`: one or more of the same station and temper.
 * Answers the word for the part that cannot be used: `points` do not cross the midline or end within 40 mm of it,
 * `repeats` were not drawn in the unit of the first.
 */
export function formSection(
  traces: readonly Trace[],
  xMm: number,
  station: Station,
  temper: Temper,
): FormedSection | "points" | "repeats" {
  const mean = meanTrace(traces);
  if (typeof mean === "string") return mean;
  const { curve, top, topMm } = mean;
  const sides = { near: sideForm(curve, top, 0, topMm), off: sideForm(curve, top, curve.length, topMm) };
  const ids = traceIds(station, temper);
  const { uncertain, ...doubt } = traceDoubt(ids, mean.repeats, mean.spreadMm);
  return { section: sectionOf(sides, ids, xMm, doubt, uncertain), sides, ids };
}

type Widths = Pick<Section, "widthOwnMm" | "widthSharedMm">;

function sectionOf(
  sides: BySide<SideForm>,
  ids: TraceIds,
  xMm: number,
  widths: Widths,
  uncertain: readonly Uncertain[],
): Section {
  const near = lastKept((deviations: Deviations) =>
    shiftedSide(sides.near, shiftOf(ids, "near", deviations)),
  );
  const off = lastKept((deviations: Deviations) => shiftedSide(sides.off, shiftOf(ids, "off", deviations)));
  const shifted = { near, off };
  return {
    xMm,
    ...widths,
    uncertain,
    faceAngleRad: (side, fromMm, toMm, deviations) => faceAngle(shifted[side](deviations), fromMm, toMm),
    halfWidthMm: (side, depthMm, deviations) => halfWidth(shifted[side](deviations), depthMm),
    outline: outlineOf(sides),
  };
}

function outlineOf({ near, off }: BySide<SideForm>): readonly (readonly [number, number])[] {
  const points: [number, number][] = [];
  for (let i = NODES - 1; i > 0; i--) points.push([-near.u[i]!, near.z[i]!]);
  for (let i = 0; i < NODES; i++) points.push([off.u[i]!, off.z[i]!]);
  return points;
}
