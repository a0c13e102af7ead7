import { DEG_PER_RAD } from "../answer/figures.ts";
import type { Answer } from "../answer/result.ts";
import type { NoRest, Rest } from "../fit/fit.ts";
import type { LoadsRead } from "../fit/loads-read.ts";
import type { Mounting } from "../fit/mounting.ts";
import { refusalSays } from "../fit/refusal-words.ts";
import type { StateFit } from "../fit/states.ts";

/** Girth, half-seat, risen and mounting in words, for the fitter. */
export function stateSays({ today, states }: Answer, loads: LoadsRead): readonly string[] {
  if (states === undefined || today?.rest?.ok !== true) return [];
  const { rest } = today;
  return [
    `Girth on ${loads.girth.says}.`,
    halfSeatSays(states.halfSeat, rest),
    ...(states.risen === undefined ? [] : [risenSays(states.risen)]),
    ...mountingSays(states.mounting, loads.mounts),
  ];
}

function halfSeatSays(found: StateFit, rest: Rest): string {
  if (!found.ok) return `Half-seat: ${refusalSays(found.why)}`;
  const lower = rest.crownOverBackMm - found.seat.crownOverBackMm;
  const turned = (rest.headUpRad - found.seat.headUpRad) * DEG_PER_RAD;
  return `In half-seat the front third carries ${frontPercent(found)} %, the head comes ${lower.toFixed(0)} mm lower and the seat tips forward by ${turned.toFixed(1)}°.`;
}

const risenSays = (found: StateFit): string =>
  found.ok
    ? `Risen in trot, ${found.times.toFixed(2)} times the weight: the front third carries ${frontPercent(found)} %.`
    : `Risen in trot: ${refusalSays(found.why)}`;

const frontPercent = ({ thirds }: Extract<StateFit, { ok: true }>): string =>
  (100 * thirds.filter(({ third }) => third === "front").reduce((sum, { share }) => sum + share, 0)).toFixed(
    0,
  );

/** As this rider mounts, and from the ground beside the platform where that is not how. */
function mountingSays(
  { ground, platform }: { readonly ground: Mounting | NoRest; readonly platform: Mounting | NoRest },
  mounts: LoadsRead["mounts"],
): readonly string[] {
  const caution =
    "Mount from a platform: force on the withers is less (Geutjens et al. 2008, Vet J 175:332-337, ten riders; there it lay on the right of the withers in 97 of 100).";
  return mounts === "platform"
    ? [mountedSays("a platform", platform)]
    : [mountedSays("the ground", ground), mountedSays("a platform", platform), caution];
}

function mountedSays(from: string, found: Mounting | NoRest): string {
  if (!found.ok) return `Mounting from ${from}: ${refusalSays(found.why)}`;
  const { rollRad, sideForceN, offBearingSideN, frontNearN, frontOffN } = found;
  return `Mounting near side from ${from}: the saddle rolls ${(rollRad * DEG_PER_RAD).toFixed(1)}° and is pushed to the near side by ${sideForceN.toFixed(0)} N; were the off side of the withers to hold that alone, ${offBearingSideN.toFixed(0)} N would come there (${frontOffN.toFixed(0)} N without) against ${frontNearN.toFixed(0)} N on the near side in front.`;
}
