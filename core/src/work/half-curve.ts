/** One half of a head under a press, read off a table. All of it mm outward (or inward, for closing) at the tip, and above zero. */
export interface HalfCurve {
  /** Table over what the half is held at, from its state before the job, every STEP_MM. */
  readonly forceN: Float64Array;
  /** Kept after a first pass held there, and after a later one: joints that slipped keep less. */
  readonly keptFirstMm: Float64Array;
  readonly keptLaterMm: Float64Array;
  /** Greatest stretch of the wood there, without unit. */
  readonly stretch: Float64Array;
  /** Of each mm at the tip: how far the half turns, rad, and what the upper level goes. */
  readonly turnPerMm: number;
  readonly upperPerMm: number;
}

/** Step of the tables, and how far they reach; beyond, they go on as they end. mm */
export const STEP_MM = 0.25;
export const REACH_MM = 20;
export const PLACES = REACH_MM / STEP_MM + 1;

/** A table at a place, straight between its steps and on beyond its end. */
export function read(table: Float64Array, heldMm: number): number {
  const place = Math.max(0, heldMm) / STEP_MM;
  const below = Math.max(0, Math.min(Math.floor(place), PLACES - 2));
  const a = table[below] ?? Number.NaN;
  return a + (place - below) * ((table[below + 1] ?? Number.NaN) - a);
}

/** Rising places and what was found at them, brought to the steps of a table; beyond the last it goes on as it ended. */
export function onSteps(heldMm: readonly number[], found: readonly number[]): Float64Array {
  const table = new Float64Array(PLACES);
  let at = 0;
  for (let i = 0; i < PLACES; i++) {
    const wanted = i * STEP_MM;
    while (at < heldMm.length - 2 && (heldMm[at + 1] ?? wanted) < wanted) at++;
    const [x0 = 0, x1 = 0] = heldMm.slice(at, at + 2);
    const [y0 = 0, y1 = 0] = found.slice(at, at + 2);
    table[i] = y0 + ((wanted - x0) / (x1 - x0)) * (y1 - y0);
  }
  return table;
}
