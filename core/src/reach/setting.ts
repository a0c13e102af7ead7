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
