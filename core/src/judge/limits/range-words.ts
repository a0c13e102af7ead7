import type { LimitRule } from "../judgement.ts";
import { OPEN } from "./bands.ts";

/** From one end to the other in words; an end that is open is not named ("from 45 mm", "within ± 4 degrees"). */
export function rangeSays([lo, hi]: readonly [number, number], unit: LimitRule["unit"]): string {
  const name = unit === "deg" ? "degrees" : unit;
  if (lo <= -OPEN) return `up to ${hi} ${name}`;
  if (hi >= OPEN) return `from ${lo} ${name}`;
  return lo === -hi ? `within ± ${hi} ${name}` : `${lo} to ${hi} ${name}`.replace(/^-/, "−");
}
