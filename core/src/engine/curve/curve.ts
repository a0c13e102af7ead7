import type { Point } from "./point.ts";
import { type Jet, jetAt, type Spline } from "./spline.ts";

/**
 * A plane curve, each coordinate a cubic spline of the length along it, so that it may double back.
 * The parameter runs from 0 to `length`; beyond its ends the curve goes on straight.
 */
export interface Curve {
  readonly y: Spline;
  readonly z: Spline;
  readonly length: number;
}

export function pointAt(curve: Curve, s: number): Point {
  return [jetAt(curve.y, s)[0], jetAt(curve.z, s)[0]];
}

/** Unit tangent, in the direction of rising s. */
export function tangentAt(curve: Curve, s: number): Point {
  const a = jetAt(curve.y, s)[1];
  const b = jetAt(curve.z, s)[1];
  const size = Math.sqrt(a * a + b * b);
  return [a / size, b / size];
}

/** Signed curvature, 1/length: positive where the curve turns to the left. */
export function curvatureAt(curve: Curve, s: number): number {
  return curvatureOf(jetAt(curve.y, s), jetAt(curve.z, s));
}

/** Curvature from the derivatives of the two coordinates, whatever the parameter. */
export function curvatureOf([, y1, y2]: Jet, [, z1, z2]: Jet): number {
  const speed2 = y1 * y1 + z1 * z1;
  return (y1 * z2 - z1 * y2) / (speed2 * Math.sqrt(speed2));
}

/** Points at n even steps of the parameter, both ends included. */
export function resample(curve: Curve, n: number): Point[] {
  return Array.from({ length: n }, (_, i) => pointAt(curve, (curve.length * i) / (n - 1)));
}
