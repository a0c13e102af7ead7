import { atan, cos, sin } from "../engine/number/index.ts";
import type { BySide, Side } from "../terms/places.ts";
import type { Deviations, Lacking, Section } from "./model.ts";

/** What the head is to leave between itself and the back. */
export interface Wish {
  /** From crown to the line of the tips, mm: the head keeps its depth. */
  readonly depthMm: number;
  /** From the inside of the crown down to the top of the back, mm. */
  readonly clearanceMm: number;
  /** Panel between the points and the back, square to the point, mm. 0 for a tree laid on the back itself. */
  readonly panelMm: number;
}

/** One half of a head that fits one side of a back. */
export interface WantedHalf {
  /** From the centre plane to the inside of the tip, mm. */
  readonly halfSpreadMm: number;
  readonly halfAngleRad: number;
}

/** The symmetric head for a back: made for its larger side, never for the mean. */
export interface WantedHead extends WantedHalf {
  readonly spreadMm: number;
  readonly depthMm: number;
  /** Panel that was allowed for between it and the back, mm; 0 for a tree laid on the back itself. */
  readonly panelMm: number;
  readonly larger: Side;
  /** What each side by itself would take. */
  readonly sides: BySide<WantedHalf>;
}

/** The straight part of a point begins about this far below the crown, mm (common practice, no source). */
export const STRAIGHT_BELOW_CROWN_MM = 35;
/** Nearer to the top of the back than this it is round, and no point bears, mm (assumption 15 to 25); a shallow head takes half of it. */
const TOP_FREE_MM = 20;
/** The face must be seen over at least this much depth, mm (assumption). */
const FACE_LEAST_MM = 15;
const PLACES = 9;
/** The panel moves the face that counts down the back by its thickness; three rounds settle it to below 0.1 mm. */
const ROUNDS = 3;

/**
 * The head that would fit this front section: the straight line of least squares through the back where the points
 * lie, moved out by the panel, read at the level of the tips. A path where the trace or the head is not deep enough.
 */
export function wantedHead(section: Section, wish: Wish, deviations: Deviations): WantedHead | Lacking {
  const near = wantedHalf(section, "near", wish, deviations);
  const off = wantedHalf(section, "off", wish, deviations);
  if (typeof near === "string" || typeof off === "string")
    return { lacking: [typeof near === "string" ? near : String(off)] };
  const larger = near.halfSpreadMm > off.halfSpreadMm ? "near" : "off";
  const half = larger === "near" ? near : off;
  const { depthMm, panelMm } = wish;
  return { ...half, spreadMm: 2 * half.halfSpreadMm, depthMm, panelMm, larger, sides: { near, off } };
}

/** Outside the tips, mm, of a head whose points are this thick. */
export const outsideSpreadMm = (head: WantedHead, thicknessMm: number): number =>
  head.spreadMm + (2 * thicknessMm) / cos(head.halfAngleRad);

function wantedHalf(section: Section, side: Side, wish: Wish, deviations: Deviations): WantedHalf | string {
  const tipBelowTopMm = wish.depthMm - wish.clearanceMm;
  const coveredMm = wish.depthMm - STRAIGHT_BELOW_CROWN_MM;
  let lowered = 0;
  let half: WantedHalf | undefined;
  for (let round = 0; round < ROUNDS; round++) {
    const to = tipBelowTopMm + lowered;
    const from = Math.min(Math.max(TOP_FREE_MM, to - coveredMm), to - FACE_LEAST_MM);
    if (from < TOP_FREE_MM / 2) return "saddle.head.depth";
    const line = lineThrough(section, side, from, to, deviations);
    if (line === undefined) return "traces.front.points";
    const halfAngleRad = atan(line.widening);
    const faceMm = line.middleMm + (tipBelowTopMm - (from + to) / 2) * line.widening;
    half = { halfSpreadMm: faceMm + wish.panelMm / cos(halfAngleRad), halfAngleRad };
    lowered = wish.panelMm * sin(halfAngleRad);
  }
  return half ?? "traces.front.points";
}

/** Half-width over depth as a straight line of least squares: its middle, and how much it widens per mm down. */
function lineThrough(section: Section, side: Side, from: number, to: number, deviations: Deviations) {
  let sum = 0;
  let product = 0;
  let square = 0;
  for (let k = 0; k < PLACES; k++) {
    const depth = from + ((to - from) * (k + 0.5)) / PLACES;
    const width = section.halfWidthMm(side, depth, deviations);
    if (width === undefined) return undefined;
    const off = depth - (from + to) / 2;
    sum += width;
    product += width * off;
    square += off * off;
  }
  return { middleMm: sum / PLACES, widening: product / square };
}
