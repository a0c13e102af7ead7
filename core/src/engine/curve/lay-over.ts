import { type Closest, closest, closestNear } from "./closest.ts";
import type { Curve } from "./curve.ts";
import { resample } from "./curve.ts";
import type { Point } from "./point.ts";
import { type Motion, move, rigidFit } from "./rigid.ts";

/** Rounds of nearest places at most; moved copies need one. */
const ROUNDS = 12;
/** The fit has settled when a round betters its mean square by less than this part. */
const SETTLED = 1e-6;
/** From round to round a nearest place moves less than this part of the curve. */
const REACH = 0.05;
/** A foot at the end of the curve counts only if it is the end itself, to this distance. */
const SAME_END = 1e-6;

export interface Laid {
  /** The repeat's place for each place of the first; undefined where the repeat ends before it. */
  readonly matched: readonly (Point | undefined)[];
  /** From the first one's sheet back to the repeat's. */
  readonly back: Motion;
  /** The scale that would lay it best on the first. */
  readonly scale: number;
}

/**
 * Lays a repeat over places of the first curve by turn and shift: first by even lengths along both, then round by
 * round onto the nearest places (iterated closest points, Besl and McKay 1992, in the plane).
 */
export function layOver(base: readonly Point[], other: Curve): Laid {
  let fit = rigidFit(resample(other, base.length), base);
  const { scale } = fit;
  let feet = base.map((point) => closest(other, move(undo(fit), point)));
  for (let round = 0; round < ROUNDS; round++) {
    const pairs = base.flatMap((point, i) =>
      feet[i] && counts(feet[i]) ? [[feet[i].point, point] as const] : [],
    );
    if (pairs.length < base.length / 4) break;
    const before = fit.meanSquare;
    fit = rigidFit(
      pairs.map(([from]) => from),
      pairs.map(([, to]) => to),
    );
    const back = undo(fit);
    feet = base.map((point, i) =>
      closestNear(other, move(back, point), feet[i]?.s ?? 0, REACH * other.length),
    );
    if (Math.abs(before - fit.meanSquare) <= SETTLED * fit.meanSquare) break;
  }
  return {
    matched: feet.map((foot) => (counts(foot) ? move(fit, foot.point) : undefined)),
    back: undo(fit),
    scale,
  };
}

const counts = (foot: Closest): boolean => !foot.atEnd || foot.distance <= SAME_END;

function undo({ cos, sin, shift: [a, b] }: Motion): Motion {
  return { cos, sin: -sin, shift: [-cos * a - sin * b, sin * a - cos * b] };
}
