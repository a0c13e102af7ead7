import { PI } from "../engine/number/index.ts";
import type { Station } from "../terms/places.ts";
import type { Uncertain } from "./model.ts";

/**
 * A trace by flexible curve: its whole width at one height is known to 3 mm, its face angle to 2 degrees
 * (standard uncertainties; assumption). Half of the variance belongs to the one trace, half to the curve and the
 * hand, so that each part has the standard uncertainty of the whole over the root of two.
 */
export const TRACE_WIDTH_MM = 3;
export const TRACE_TILT_RAD = (2 * PI) / 180;
const ROOT_OF_TWO = Math.sqrt(2);

export const SHARED_WIDTH = "flexible-curve.width.mm";
export const SHARED_TILT = "flexible-curve.tilt.rad";

/** Standard uncertainty of a point across the curve: read off the sheet by ruler (settled for rulers: 1 mm own; assumption). */
export const POINT_MM = 1;

export type Temper = "cold" | "warm";

export interface TraceIds {
  readonly width: { readonly near: string; readonly off: string };
  readonly tilt: { readonly near: string; readonly off: string };
}

export function traceIds(station: Station, temper: Temper): TraceIds {
  const id = (word: string) => `trace.${station}.${temper}.${word}`;
  return {
    width: { near: id("widthNear.mm"), off: id("widthOff.mm") },
    tilt: { near: id("tiltNear.rad"), off: id("tiltOff.rad") },
  };
}

export interface TraceDoubt {
  /** Of the whole width; its two sides err each by themselves. */
  readonly widthOwnMm: number;
  readonly widthSharedMm: number;
  readonly uncertain: readonly Uncertain[];
}

/**
 * Doubt of the mean of n traces of one place. Only the own part averages away. Where the repeats differ more from
 * each other (spread of one side across the curve, mm) than the own part says, their spread is believed.
 */
export function traceDoubt(ids: TraceIds, repeats: number, spreadMm: number): TraceDoubt {
  const root = Math.sqrt(repeats);
  const stated = TRACE_WIDTH_MM / ROOT_OF_TWO;
  const more = Math.max(1, (ROOT_OF_TWO * spreadMm) / stated) / root;
  const widthOwnMm = stated * more;
  const tiltOwn = (TRACE_TILT_RAD / ROOT_OF_TWO) * more;
  const normal = (id: string, sd: number): Uncertain => ({ id, kind: "normal", mean: 0, sd });
  return {
    widthOwnMm,
    widthSharedMm: stated,
    uncertain: [
      normal(ids.width.near, widthOwnMm / ROOT_OF_TWO),
      normal(ids.width.off, widthOwnMm / ROOT_OF_TWO),
      normal(ids.tilt.near, tiltOwn),
      normal(ids.tilt.off, tiltOwn),
      normal(SHARED_WIDTH, stated),
      normal(SHARED_TILT, TRACE_TILT_RAD / ROOT_OF_TWO),
    ],
  };
}
