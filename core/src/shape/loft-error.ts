import { type ByStation, SIDES } from "../terms/places.ts";
import { loftRow, readRow, type Sides } from "./loft.ts";

/** Where a panel bears, as distances from the midline, mm (assumption). */
const BEARING_MM = [40, 130] as const;
const STEP_MM = 5;

/** Root mean square over the bearing of the middle trace less what a straight loft from front to rear puts there, mm. */
export function loftError(sides: Sides, xs: ByStation<number>): number {
  const part = (xs.mid - xs.front) / (xs.rear - xs.front);
  let sum = 0;
  let count = 0;
  for (const side of SIDES) {
    const read = loftRow(sides, side, { front: 0, mid: 1, rear: 0 });
    const guessed = loftRow(sides, side, { front: 1 - part, mid: 0, rear: part });
    const reach = Math.min(BEARING_MM[1], read.u[read.n - 1]!, guessed.u[guessed.n - 1]!);
    const n = Math.max(1, Math.floor((reach - BEARING_MM[0]) / STEP_MM) + 1);
    const at = Float64Array.from({ length: n }, (_, k) => BEARING_MM[0] + k * STEP_MM);
    const [found, without, slope] = [new Float64Array(n), new Float64Array(n), new Float64Array(n)];
    readRow(read, at, found, slope);
    readRow(guessed, at, without, slope);
    for (let k = 0; k < n; k++) sum += (found[k]! - without[k]!) * (found[k]! - without[k]!);
    count += n;
  }
  return Math.sqrt(sum / count);
}
