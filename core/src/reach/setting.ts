export const WAYS = ["as-found", "exchange", "press", "heat", "imagined"] as const;
export type Way = (typeof WAYS)[number];

/** One thing the head can become. Change is of the spread inside the tips against today; opening is positive. */
export interface Setting {
  readonly id: string;
  readonly way: Way;
  readonly changeMm: number;
  readonly spreadMm: number;
  /** Index into the plates at hand, for the way `exchange` of a plate. */
  readonly plate: number | undefined;
  /** Index into the positions of the inserts, both sides the same, for the way `exchange` of inserts. */
  readonly position?: number | undefined;
  /** Half-angle of the new head less today's, where it was read (a plate); undefined: it follows from the change. */
  readonly halfTurnRad: number | undefined;
  /** More than a tree takes inside its saddle: only stripped. */
  readonly needsBare: boolean;
  /** Why it is not allowed though it could be imagined; empty when it is allowed by what the material and history take. */
  readonly shutBy: readonly string[];
}

/** What the turn of the halves needs besides the tree: drawn, since no frame is solved yet. */
export interface TurnBelief {
  /** Hinge's height over the tips as part of the crown's height, 0.68 to 1.0. */
  readonly hingePart: number;
  /** Part of the turn that the rear keeps, 0.08 to 0.27. */
  readonly rearPart: number;
  /** How the turn fades, 1 to 1.5. */
  readonly fade: number;
}
