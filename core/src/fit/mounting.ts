import type { Load, Pull } from "../engine/contact/problem.ts";
import { settle } from "../engine/contact/settle.ts";
import { sin } from "../engine/number/index.ts";
import type { Side } from "../terms/places.ts";
import { assumedLoad } from "./assumed-loads.ts";
import type { NoRest } from "./fit.ts";
import type { LoadsRead } from "./loads-read.ts";
import type { Sitting, SittingProblem } from "./problem.ts";
import { thirdsOf } from "./thirds.ts";

/** Rider going up on the near side, the whole load on one bar and a hand. */
export interface Mounting {
  readonly ok: true;
  /** Toward the near side is positive, rad. */
  readonly rollRad: number;
  /** Force toward the near side that the calculation holds and does not place, N. */
  readonly sideForceN: number;
  /** On the faces in front, N, as the pressures have it. */
  readonly frontNearN: number;
  readonly frontOffN: number;
  /** The same on the off face, were all of the side force borne there, where the back is steep enough to hold it. */
  readonly offBearingSideN: number;
}

/** Behind the deepest seat, and above the line of the bearing: where the hand lies on the cantle, mm (from memory). */
const CANTLE_BEHIND_MM = 160;
const CANTLE_HIGH_MM = 60;

/**
 * Mounting from the near side, from the ground or from a platform of 350 mm: the load on the near bar, pulling down and
 * outward, with a hand on the cantle. Fore and aft and sideways are held, so what pushes the saddle over is told as a
 * force, and not where it would end.
 */
export function mounting(
  sitting: Sitting,
  loads: LoadsRead,
  problem: SittingProblem,
  from: "ground" | "platform",
): Mounting | NoRest {
  const found = settle({ ...problem, load: mountingLoad(sitting, loads, problem.load, from) });
  if (!found.ok) return found;
  const { cells } = problem;
  let totalN = 0;
  for (let i = 0; i < cells.n; i++) totalN += found.pressure[i]! * cells.area[i]!;
  const thirds = thirdsOf(cells, found.pressure);
  const front = (side: Side) =>
    totalN * (thirds.find((one) => one.third === "front" && one.side === side)?.share ?? 0);
  const sideForceN = -found.unbalancedYN;
  const steep = sin(sitting.tree.halves.off.faceAngleRad(sitting.tree.stationsMm.front));
  return {
    ok: true,
    rollRad: found.pose.roll,
    sideForceN,
    frontNearN: front("near"),
    frontOffN: front("off"),
    offBearingSideN: front("off") + sideForceN / steep,
  };
}

function mountingLoad(
  { tree, deviations }: Sitting,
  { bars }: LoadsRead,
  atRest: Load,
  from: "ground" | "platform",
): Load {
  const ground = from === "ground";
  const times = assumedLoad(ground ? "groundTimes" : "platformTimes", deviations);
  const outward = assumedLoad(ground ? "groundOutward" : "platformOutward", deviations);
  const hand = assumedLoad("mountHandPart", deviations);
  const bar = bars.at(tree, deviations).near;
  const onBarN = times * (1 - hand) * atRest.weightN;
  const lean: Pull = { at: bar, force: { x: 0, y: -outward * onBarN, z: 0 } };
  const cantle: Pull = {
    at: { x: tree.deepestSeatMm + CANTLE_BEHIND_MM, y: 0, z: CANTLE_HIGH_MM },
    force: { x: 0, y: 0, z: -hand * times * atRest.weightN },
  };
  return { weightN: onBarN, at: bar, turnsWithBody: true, pulls: [...atRest.pulls, lean, cantle] };
}
