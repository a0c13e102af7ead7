import { PI } from "../number/index.ts";

/** What one row of rivets passes, N: by shear of the rivets, by bearing of what they go through, by tearing of the plate between the holes. */
export interface RivetRow {
  readonly shearN: number;
  readonly bearingN: number;
  readonly tearingN: number;
}

/**
 * A plate with rivets. Working or ultimate stresses in MPa, as handed in, mm. Published: usual handbook checks (n tau pi
 * d^2 / 4, n d t sigma, (w - n hole) t sigma), n rivets across the pull for tearing.
 */
export function rivetRow(row: {
  readonly rivets: number;
  readonly diameterMm: number;
  readonly shearMPa: number;
  readonly plate: {
    readonly widthMm: number;
    readonly thicknessMm: number;
    readonly pullMPa: number;
    readonly bearingMPa: number;
  };
  readonly holeMm: number;
  readonly acrossPull: number;
}): RivetRow {
  const { rivets, diameterMm, shearMPa, plate, holeMm, acrossPull } = row;
  return {
    shearN: rivets * shearMPa * ((PI * diameterMm * diameterMm) / 4),
    bearingN: rivets * diameterMm * plate.thicknessMm * plate.bearingMPa,
    tearingN: (plate.widthMm - acrossPull * holeMm) * plate.thicknessMm * plate.pullMPa,
  };
}

/** Embedding strength of timber under a dowel, MPa: 0.082 (1 - 0.01 d) rho. Published: EN 1995-1-1, 8.5.1.1; from memory. */
const embeddingMPa = (diameterMm: number, densityKgM3: number): number =>
  0.082 * (1 - 0.01 * diameterMm) * densityKgM3;

/** What rivets pass into timber by bearing on it, N. */
export const timberBearingN = (
  rivets: number,
  diameterMm: number,
  densityKgM3: number,
  thicknessMm: number,
): number => rivets * diameterMm * thicknessMm * embeddingMPa(diameterMm, densityKgM3);
