import { at, centroid, type Point } from "./point.ts";

/** A turn and a shift: [a, b] goes to [c a - s b + shift[0], s a + c b + shift[1]]. Never a reflection. */
export interface Motion {
  readonly cos: number;
  readonly sin: number;
  readonly shift: Point;
}

export interface RigidFit extends Motion {
  readonly meanSquare: number;
  /** The scale that a similarity would take besides: far from 1, the two were not drawn in the same unit. */
  readonly scale: number;
}

/**
 * The turn and shift that carry `from` onto `to`, point by point, with the least mean square distance.
 * Closed form in the plane (Kabsch 1976 and Umeyama 1991, reflection forbidden): the best turn is the direction
 * of the sum of products of the centred points as complex numbers. Both lists of one length, at least two points.
 */
export function rigidFit(from: readonly Point[], to: readonly Point[]): RigidFit {
  const [p, q] = [centroid(from), centroid(to)];
  let along = 0;
  let across = 0;
  let fromSize = 0;
  let toSize = 0;
  for (let i = 0; i < from.length; i++) {
    const [a, b] = [at(from, i)[0] - p[0], at(from, i)[1] - p[1]];
    const [c, d] = [at(to, i)[0] - q[0], at(to, i)[1] - q[1]];
    along += a * c + b * d;
    across += a * d - b * c;
    fromSize += a * a + b * b;
    toSize += c * c + d * d;
  }
  const size = Math.sqrt(along * along + across * across);
  const [cos, sin] = size > 0 ? [along / size, across / size] : [1, 0];
  return {
    cos,
    sin,
    shift: [q[0] - cos * p[0] + sin * p[1], q[1] - sin * p[0] - cos * p[1]],
    meanSquare: Math.max(0, fromSize + toSize - 2 * size) / from.length,
    scale: fromSize > 0 ? size / fromSize : 1,
  };
}

export const move = ({ cos, sin, shift }: Motion, [a, b]: Point): Point => [
  cos * a - sin * b + shift[0],
  sin * a + cos * b + shift[1],
];
