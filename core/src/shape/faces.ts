import { atan, cos, sin } from "../engine/number/index.ts";

/**
 * Half of the difference between a head's outside and inside spread at one height, mm: a leg of thickness t
 * (square to itself) at an angle a to the vertical is t / cos(a) thick along the horizontal. Derived.
 */
export function throughLegMm(thicknessMm: number, halfAngleRad: number): number {
  return thicknessMm / cos(halfAngleRad);
}

export interface Face {
  /** Distance of the inner edge from the tree's centre plane, mm. */
  readonly innerEdgeMm: number;
  readonly widthMm: number;
  /** To the horizontal; outer edge lower is positive. */
  readonly faceAngleRad: number;
  /** Height of the middle of the face, mm. */
  readonly heightMm: number;
}

export interface Thickness {
  readonly inner: number;
  readonly middle: number;
  readonly outer: number;
}

/**
 * The panel's face below a rail's: the panel adds its thickness square to the rail, down and toward the middle;
 * a panel thicker at its outer edge is a wedge that makes the face steeper. Derived.
 */
export function panelFace(rail: Face, { inner, middle, outer }: Thickness): Face {
  const wedgeRad = atan((outer - inner) / rail.widthMm);
  const [c, s] = [cos(rail.faceAngleRad), sin(rail.faceAngleRad)];
  return {
    innerEdgeMm: rail.innerEdgeMm - inner * s,
    widthMm: rail.widthMm / cos(wedgeRad),
    faceAngleRad: rail.faceAngleRad + wedgeRad,
    heightMm: rail.heightMm - middle * c,
  };
}
