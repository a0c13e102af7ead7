import type { Vector } from "../engine/contact/problem.ts";
import { Doubts } from "../shape/doubt.ts";
import type { Deviations, Tree, Uncertain } from "../shape/model.ts";
import type { SurveyedSaddle } from "../survey/case.ts";
import type { BySide } from "../terms/places.ts";
import { type AssumedLoadName, assumedLoad, uncertainOf } from "./assumed-loads.ts";

/** Where the stirrup leathers hang, in the saddle's frame, with what is not known of it. */
export interface BarsBelief {
  at(tree: Tree, deviations: Deviations): BySide<Vector>;
  readonly uncertain: readonly Uncertain[];
}

/** As read; where not read, the usual place ahead of the deepest seat. Sideways they stand evenly about the centre plane. */
export function barsOf({ bars }: SurveyedSaddle): BarsBelief {
  const doubts = new Doubts();
  const read = {
    near: doubts.takeIfRead("saddle.bars.near", bars.near),
    off: doubts.takeIfRead("saddle.bars.off", bars.off),
    apart: doubts.takeIfRead("saddle.bars.apart", bars.apart),
    under: doubts.takeIfRead("saddle.bars.underStraightEdge", bars.underStraightEdge),
  };
  const at = (tree: Tree, deviations: Deviations): BySide<Vector> => {
    const usual = tree.deepestSeatMm - assumedLoad("barsAheadMm", deviations);
    const [near, off] = [read.near?.(deviations), read.off?.(deviations)];
    const out = (read.apart?.(deviations) ?? assumedLoad("barsApartMm", deviations)) / 2;
    const under = read.under?.(deviations);
    const z = under === undefined ? tree.tipHeightMm + assumedLoad("barsOverTipsMm", deviations) : -under;
    return { near: { x: near ?? off ?? usual, y: -out, z }, off: { x: off ?? near ?? usual, y: out, z } };
  };
  const assumed: AssumedLoadName[] = [];
  if (read.near === undefined && read.off === undefined) assumed.push("barsAheadMm");
  if (read.apart === undefined) assumed.push("barsApartMm");
  if (read.under === undefined) assumed.push("barsOverTipsMm");
  return { at, uncertain: [...doubts.uncertain, ...uncertainOf(assumed)] };
}

/** The point at which a load acts when this part of it is on the bars, the rest at the seat's own point. */
export function loadPoint(seat: Vector, bars: BySide<Vector>, part: number): Vector {
  const on = (of: keyof Vector) => (1 - part) * seat[of] + (part * (bars.near[of] + bars.off[of])) / 2;
  return part === 0 ? seat : { x: on("x"), y: on("y"), z: on("z") };
}
