import { factorBanded, substituteBanded } from "../banded.ts";
import { assembled, type Stiffness } from "./assemble.ts";
import { DIRECTIONS, type Direction, type Frame, PER_NODE, type Support, unknownOf } from "./model.ts";

/** A frame that is held so that it cannot move as a whole or in part. */
export interface Held {
  readonly ok: true;
  /** Displacements and turns, six a node, under forces and couples, six a node; mm, rad, N, N mm. */
  under(loads: Float64Array): Float64Array;
}

/** Nothing stands against this displacement or turn: too little is held, or a part has no stiffness. */
export interface Mechanism {
  readonly ok: false;
  readonly node: number;
  readonly direction: Direction;
}

/** A pivot below this part of its own diagonal entry is round-off. A chain of 200 beams, free at its end, keeps 1e-8. */
const LEAST_PIVOT = 1e-12;

/**
 * The frame with some displacements held at zero, factored once for any number of loads. Hold six that stop it as a
 * whole and no more, unless more are held in truth: held so, it takes up loads that balance each other without any
 * reaction. Nothing is made up for a part that can move: it is refused, with the place.
 */
export function held(frame: Frame, supports: readonly Support[]): Held | Mechanism {
  const stiffness = assembled(frame);
  const fixed = supports.map(unknownOf);
  for (const unknown of fixed) hold(stiffness, unknown);
  const { band, n, width } = stiffness;
  const free = factorBanded(band, n, width, LEAST_PIVOT);
  if (free !== undefined)
    return {
      ok: false,
      node: Math.floor(free / PER_NODE),
      direction: DIRECTIONS[free % PER_NODE] ?? "x",
    };
  const under = (loads: Float64Array): Float64Array => {
    const moved = loads.slice(0, n);
    for (const unknown of fixed) moved[unknown] = 0;
    substituteBanded(band, moved, n, width);
    return moved;
  };
  return { ok: true, under };
}

/** The row and column of one unknown taken out; the band keeps its shape. */
function hold({ band, n, width }: Stiffness, unknown: number): void {
  const row = width + 1;
  for (let d = 1; d <= width; d++) {
    if (unknown - d >= 0) band[unknown * row + d] = 0;
    if (unknown + d < n) band[(unknown + d) * row + d] = 0;
  }
  band[unknown * row] = 1;
}
