import { atan } from "../engine/number/index.ts";
import { NODES, type ShiftedSide, STEEPEST } from "./side-form.ts";

/** Places between two distances at which the face is read for its angle: the middles of as many even parts. */
const FACE_PLACES = 13;

/**
 * Heights of a side's upper branch at even places from `fromMm` to `toMm`, each handed to `take`. Past the
 * side's end, and from where it becomes too steep or turns back, it goes on straight, down.
 */
function walkFace(
  { u: us, z: zs, beyondSlope }: ShiftedSide,
  fromMm: number,
  toMm: number,
  take: (u: number, z: number) => void,
): void {
  let i = 1;
  let [u0, z0] = [us[0]!, zs[0]!];
  let [u1, z1] = [us[1]!, zs[1]!];
  let beyond = beyondSlope;
  for (let k = 0; k < FACE_PLACES; k++) {
    const u = fromMm + ((toMm - fromMm) * (k + 0.5)) / FACE_PLACES;
    while (i < NODES) {
      if (u1 <= u0 || (u1 - u0) * STEEPEST < z0 - z1) {
        beyond = -STEEPEST;
        i = NODES;
      } else if (u1 < u) {
        [u0, z0] = [u1, z1];
        i++;
        if (i < NODES) [u1, z1] = [us[i]!, zs[i]!];
      } else break;
    }
    take(u, z0 + (u - u0) * (i < NODES ? (z1 - z0) / (u1 - u0) : beyond));
  }
}

/** Angle to the horizontal of the straight line of least squares through the face between two distances; positive falls away. */
export function faceAngle(side: ShiftedSide, fromMm: number, toMm: number): number {
  const middle = (fromMm + toMm) / 2;
  let zu = 0;
  let uu = 0;
  walkFace(side, fromMm, toMm, (u, z) => {
    zu += z * (u - middle);
    uu += (u - middle) * (u - middle);
  });
  return -atan(zu / uu);
}

/** Distance from the midline at which the side first reaches a depth below the top; undefined where it ends above it. */
export function halfWidth({ u, z }: ShiftedSide, depthMm: number): number | undefined {
  for (let i = 1; i < NODES; i++) {
    const z1 = z[i]!;
    if (z1 > -depthMm) continue;
    const [u0, z0, u1] = [u[i - 1]!, z[i - 1]!, u[i]!];
    return z0 > z1 ? u0 + ((z0 + depthMm) / (z0 - z1)) * (u1 - u0) : u1;
  }
  return undefined;
}
