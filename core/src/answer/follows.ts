import { cos, sin, tan } from "../engine/number/index.ts";
import type { MeasuredLimit } from "../judge/input.ts";
import type { Head } from "../shape/model.ts";
import type { STATIONS } from "../terms/places.ts";
import { DEG_PER_RAD } from "./figures.ts";
import type { Whole } from "./whole.ts";

/**
 * What a setting changes against today, in one draw: only differences, since the computed absolute is never used.
 * mm and degrees; undefined where it could not be computed.
 */
export interface Moved {
  /** Height of the crown over the back. */
  readonly clearanceMm: number | undefined;
  /** Room between the withers' side and the head's wall, half way down the head. */
  readonly besideMm: number | undefined;
  readonly seatDeg: number | undefined;
  readonly channelMm: { readonly [S in (typeof STATIONS)[number]]: number | undefined };
  /** Of the spread inside the tips. */
  readonly spreadMm: number;
  /** Turn of the halves, mean of both sides; opening is positive. */
  readonly halfTurnDeg: number | undefined;
  readonly frontRiseMm: number | undefined;
  readonly rearRiseMm: number | undefined;
}

/** Half of the central 95 % of each difference; undefined where too few draws tell it. */
export type MovedDoubt = Omit<Moved, "spreadMm"> & { readonly spreadMm: number | undefined };

export function movedBy(today: Whole, after: Whole): Moved {
  const a = today.rest?.ok ? today.rest : undefined;
  const b = after.rest?.ok ? after.rest : undefined;
  const clearanceMm = a && b && b.crownOverBackMm - a.crownOverBackMm;
  const channel = (station: "front" | "mid" | "rear") =>
    difference(today.tree?.channelMm[station], after.tree?.channelMm[station]);
  return {
    clearanceMm,
    besideMm: clearanceMm === undefined ? undefined : beside(clearanceMm, today.head, after.head),
    seatDeg: a && b && (b.headUpRad - a.headUpRad) * DEG_PER_RAD,
    channelMm: { front: channel("front"), mid: channel("mid"), rear: channel("rear") },
    spreadMm: after.head.spreadMm - today.head.spreadMm,
    halfTurnDeg: (halfAngleRad(after.head) - halfAngleRad(today.head)) * DEG_PER_RAD,
    frontRiseMm: a && b && b.frontRiseMm - a.frontRiseMm,
    rearRiseMm: a && b && b.rearRiseMm - a.rearRiseMm,
  };
}

/**
 * Room square to the wall at the level that is half way down today's head. What the wall does there follows from both
 * heads with their crowns laid on one another; the crown itself goes up by the clearance. Derived.
 */
function beside(clearanceMm: number, today: Head, after: Head): number {
  const belowCrownMm = today.depthMm / 2;
  const outMm = wallMm(after, belowCrownMm) - wallMm(today, belowCrownMm);
  const angle = halfAngleRad(after);
  return outMm * cos(angle) + clearanceMm * sin(angle);
}

/** From the centre plane to the inside of the wall, mean of both sides, mm. */
function wallMm(head: Head, belowCrownMm: number): number {
  return head.spreadMm / 2 - (head.depthMm - belowCrownMm) * tan(halfAngleRad(head));
}

const halfAngleRad = ({ halfAngleRad: { near, off } }: Head): number => (near + off) / 2;

function difference(before: number | undefined, after: number | undefined): number | undefined {
  return before === undefined || after === undefined ? undefined : after - before;
}

/**
 * Readings of today's limits carried over to a setting: reading in that state plus the computed difference. A limit
 * whose difference could not be computed comes back without a value; one that the head does not move is left out.
 */
export function carried(
  today: readonly MeasuredLimit[],
  moved: Moved,
  doubt: MovedDoubt,
): readonly MeasuredLimit[] {
  return today.flatMap((limit) => {
    const shift = shiftOf(limit);
    return shift === undefined ? [] : [carry(limit, shift(moved), shift(doubt))];
  });
}

function carry(limit: MeasuredLimit, shift: number | undefined, doubt: number | undefined): MeasuredLimit {
  if (limit.value === undefined) return limit;
  if (shift === undefined) return { ...limit, value: undefined, u: undefined, missing: [] };
  // Where too few draws came to rest to tell how sure the difference is, nothing is sure about the sum.
  const u =
    limit.u === undefined || doubt === undefined ? undefined : Math.sqrt(limit.u * limit.u + doubt * doubt);
  return { ...limit, value: limit.value + shift, u };
}

type Shift = (moved: MovedDoubt) => number | undefined;

function shiftOf({ rule, at, station }: MeasuredLimit): Shift | undefined {
  switch (rule) {
    case "clearance-girthed":
    case "clearance-rider-up":
    case "clearance-half-seat":
      return (moved) => moved.clearanceMm;
    case "clearance-side":
      return (moved) => moved.besideMm;
    case "seat-slope":
      return (moved) => moved.seatDeg;
    case "channel-over-ridge":
    case "channel-width":
      return (moved) => (station === undefined ? undefined : moved.channelMm[station]);
    case "spread-wanted":
      return at === "template" ? (moved) => moved.spreadMm : undefined;
    default:
      return undefined;
  }
}
