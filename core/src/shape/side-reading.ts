import { atan } from "../engine/number/index.ts";
import { NODES, type SideForm, type SideShift, STEEPEST, shiftedU, shiftedZ } from "./side-form.ts";

/** Places between two distances at which the face is read for its angle. */
const FACE_PLACES = 13;

/** Height of a side's upper branch at distance u from the midline; past its end or where it turns back it goes on straight, down. */
export function heightAt(form: SideForm, u: number, shift: SideShift): number {
  let u0 = shiftedU(form, 0, shift);
  let z0 = shiftedZ(form, 0, shift);
  for (let i = 1; i < NODES; i++) {
    const u1 = shiftedU(form, i, shift);
    const z1 = shiftedZ(form, i, shift);
    const steep = (u1 - u0) * STEEPEST < z0 - z1 || u1 <= u0;
    if (steep) return z0 - (u - u0) * STEEPEST;
    if (u1 >= u) return z0 + ((u - u0) / (u1 - u0)) * (z1 - z0);
    [u0, z0] = [u1, z1];
  }
  return z0 + (u - u0) * (form.endSlope - shift.tiltRad * (1 + form.endSlope * form.endSlope));
}

/** Angle to the horizontal of the straight line of least squares through the face between two distances; positive falls away. */
export function faceAngle(form: SideForm, fromMm: number, toMm: number, shift: SideShift): number {
  const middle = (fromMm + toMm) / 2;
  let zu = 0;
  let uu = 0;
  for (let k = 0; k < FACE_PLACES; k++) {
    const u = fromMm + ((toMm - fromMm) * k) / (FACE_PLACES - 1);
    zu += heightAt(form, u, shift) * (u - middle);
    uu += (u - middle) * (u - middle);
  }
  return -atan(zu / uu);
}

/** Distance from the midline at which the side first reaches a depth below the top; undefined where it ends above it. */
export function halfWidth(form: SideForm, depthMm: number, shift: SideShift): number | undefined {
  let u0 = shiftedU(form, 0, shift);
  let z0 = shiftedZ(form, 0, shift);
  for (let i = 1; i < NODES; i++) {
    const u1 = shiftedU(form, i, shift);
    const z1 = shiftedZ(form, i, shift);
    if (z1 <= -depthMm) return z0 > z1 ? u0 + ((z0 + depthMm) / (z0 - z1)) * (u1 - u0) : u1;
    [u0, z0] = [u1, z1];
  }
  return undefined;
}
