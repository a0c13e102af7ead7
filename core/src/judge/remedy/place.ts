import type { MeasuredLimit } from "../input.ts";
import { limitRule } from "../limits/all.ts";

/**
 * Whether moving the saddle along the back can put it right: what the points lack behind the blade must be to spare
 * before the last rib, and the other way round. Undefined when one of the two was not read.
 */
export function hasRoomToMove(limits: readonly MeasuredLimit[]): boolean | undefined {
  const spare = (rule: "point-behind-blade" | "panel-rear-edge"): number | undefined => {
    const values = limits.filter((one) => one.rule === rule).map((one) => one.value);
    const least = Math.min(...values.map((value) => value ?? Number.NaN));
    return values.length === 0 || Number.isNaN(least) ? undefined : least - limitRule(rule).inside[0];
  };
  const front = spare("point-behind-blade");
  const rear = spare("panel-rear-edge");
  return front === undefined || rear === undefined ? undefined : front + rear >= 0;
}
