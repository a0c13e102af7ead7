import type { Pose, RefusalReason } from "../engine/contact/problem.ts";
import { ASSUMED } from "../fit/assumed.ts";
import type { ThirdFit } from "../fit/fit.ts";
import { MESHES } from "../fit/panel-cells.ts";
import type { Moving } from "../reach/move.ts";
import { DEG_PER_RAD } from "./figures.ts";
import type { Forms } from "./forms.ts";
import { inDraw, wholeAt } from "./whole.ts";

/** The saddle put to and fro along the back, all else at its mean: where the girth and the shoulder may send it. */
export interface PlacementSweep {
  /** From the most forward place to the most rearward, mm; negative is forward. */
  readonly fromMm: number;
  readonly toMm: number;
  /** Places at which it does not come to rest, and why. */
  readonly refused: readonly { readonly placeMm: number; readonly why: RefusalReason }[];
  /** The third that carries most for its size over all places. */
  readonly hardest: (ThirdFit & { readonly placeMm: number }) | undefined;
  /** Between the lowest and the highest head end, degrees. */
  readonly seatSpanDeg: number;
}

const STEPS = 4;

/** Undefined where the whole fit cannot be worked out. `start`: the pose where it was read. */
export function placementSweep(
  forms: Forms,
  moving: Moving,
  start: Pose | undefined,
): PlacementSweep | undefined {
  if (forms.tree === undefined || forms.back === undefined) return undefined;
  const { id, lo, hi } = ASSUMED.placementMm;
  const tried = Array.from({ length: STEPS + 1 }, (_, i) => {
    const placeMm = lo + ((hi - lo) * i) / STEPS;
    const whole = wholeAt(inDraw(forms, { [id]: placeMm }), moving, { mesh: MESHES.sweep, start });
    return { placeMm, rest: whole?.pressed() };
  });
  const resting = tried.flatMap(({ placeMm, rest }) => (rest?.ok ? [{ placeMm, rest }] : []));
  const thirds = resting.flatMap(({ placeMm, rest }) => rest.thirds.map((third) => ({ ...third, placeMm })));
  const seats = resting.map(({ rest }) => rest.headUpRad * DEG_PER_RAD);
  return {
    fromMm: lo,
    toMm: hi,
    refused: tried.flatMap(({ placeMm, rest }) => (rest && !rest.ok ? [{ placeMm, why: rest.why }] : [])),
    hardest: thirds.sort((a, b) => b.meanKPa - a.meanKPa)[0],
    seatSpanDeg: seats.length === 0 ? 0 : Math.max(...seats) - Math.min(...seats),
  };
}
