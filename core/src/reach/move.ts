import type { Deviations, Head } from "../shape/model.ts";
import type { PlateBelief } from "../shape/plate.ts";
import type { HeadMove } from "./frame/head-move.ts";

/** How a setting moves the head, in any draw. */
export interface Moving {
  /** `head`: today's, in the same draw. */
  at(head: Head, deviations: Deviations): HeadMove;
  /** Hinge of each half, off the crown along the arch, mm; undefined: not known, so drawn. */
  readonly hingeOffMm: number | undefined;
}

/** Opened (closed: below zero) by so much at the tips, wherever such a head hinges. */
export const opened = (changeMm: number): Moving => ({
  at: () => ({ changeMm, halfTurnRad: undefined }),
  hingeOffMm: undefined,
});

export const AS_FOUND = opened(0);

/**
 * Another plate in the place of today's: new from its crown on, so its halves stand as turned about the crown. What
 * head and plate were both read wrong by, one instrument's shared error, cancels; a loose plate's doubt does not.
 */
export const exchanged = (plate: PlateBelief): Moving => ({
  at: (head, deviations) => {
    const { spreadMm, halfAngleRad } = plate.at(deviations);
    const { near, off } = head.halfAngleRad;
    return {
      changeMm: spreadMm - head.spreadMm,
      halfTurnRad: halfAngleRad === undefined ? undefined : halfAngleRad - (near + off) / 2,
    };
  },
  hingeOffMm: 0,
});
