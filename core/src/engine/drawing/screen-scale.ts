/**
 * The scale of a screen, found by setting two pairs of lines to the sides of a card of known size. No browser says how
 * large its pixels are: a CSS pixel is 1/96 inch only in name (CSS Values and Units 4, 6.2, reference pixel).
 */

import { U_PER_SD } from "../central.ts";

/** published: ISO/IEC 7810:2019, card of size ID-1: 85.60 by 53.98 mm (nominal, from memory). */
export const CARD_MM = { long: 85.6, short: 53.98 } as const;
export type CardSide = keyof typeof CARD_MM;

/** A new card may be so much larger or smaller than nominal, mm (ISO/IEC 7810, the larger of both sides; from memory). */
const CARD_TOLERANCE_MM = 0.13;
/** How far from the edge a line may be put by eye, either way, mm. Working limit, no source; it holds glass and squint too. */
export const BY_EYE_MM = 0.5;
/** Lines move in steps of this many CSS pixels. */
export const STEP_PX = 0.5;
/** Scales of screens in use, CSS pixels per mm: outside them something else than the card was matched. Working limit, no source. */
const PX_PER_MM = { least: 1, most: 16 } as const;
/** What was read for one side. */
export interface SideRead {
  readonly px: number;
  readonly mm: number;
  readonly pxPerMm: number;
}

export interface ScreenScale {
  readonly pxPerMm: number;
  /** Half of the central 95 % of the scale, as a part of it. */
  readonly uPart: number;
}

export type Matched =
  | { readonly ok: true; readonly scale: ScreenScale }
  | {
      readonly ok: false;
      readonly why: "sides-differ" | "no-such-screen";
      readonly long: SideRead;
      readonly short: SideRead;
      /** How far the two scales lie apart, and how far they may, as parts of the scale. */
      readonly apart: number;
      readonly allowed: number;
    };

/** The least and the most that a side may measure, CSS pixels. */
export function sideRangePx(side: CardSide): { readonly least: number; readonly most: number } {
  return { least: PX_PER_MM.least * CARD_MM[side], most: PX_PER_MM.most * CARD_MM[side] };
}

/**
 * The scale from both sides, CSS pixels between their lines: the straight line of least squares through nought, since
 * each side is read equally well in mm. Refused where the two sides differ by more than the doubt of their lines, or
 * give a scale that no screen has.
 */
export function screenScale(longPx: number, shortPx: number): Matched {
  const long = sideRead("long", longPx);
  const short = sideRead("short", shortPx);
  const squaresMm2 = long.mm * long.mm + short.mm * short.mm;
  const pxPerMm = (long.px * long.mm + short.px * short.mm) / squaresMm2;
  const apart = Math.abs(long.pxPerMm - short.pxPerMm) / pxPerMm;
  const sideUMm = U_PER_SD * sideDoubtMm(pxPerMm);
  const allowed = sideUMm * Math.sqrt(1 / (long.mm * long.mm) + 1 / (short.mm * short.mm));
  const refused = { ok: false, long, short, apart, allowed } as const;
  // Asked this way round, what is no number is refused too.
  if (!(pxPerMm >= PX_PER_MM.least && pxPerMm <= PX_PER_MM.most))
    return { ...refused, why: "no-such-screen" };
  if (!(apart <= allowed)) return { ...refused, why: "sides-differ" };
  return { ok: true, scale: { pxPerMm, uPart: sideUMm / Math.sqrt(squaresMm2) } };
}

function sideRead(side: CardSide, px: number): SideRead {
  return { px, mm: CARD_MM[side], pxPerMm: px / CARD_MM[side] };
}

/** Standard uncertainty of a side: each of two lines by eye and by half a step, and the card; each as likely anywhere within its bound. */
function sideDoubtMm(pxPerMm: number): number {
  const halfStepMm = STEP_PX / 2 / pxPerMm;
  const squares =
    2 * (BY_EYE_MM * BY_EYE_MM + halfStepMm * halfStepMm) + CARD_TOLERANCE_MM * CARD_TOLERANCE_MM;
  return Math.sqrt(squares / 3);
}
