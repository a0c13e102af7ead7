import { tan } from "../../engine/number/index.ts";
import { STRAIGHT_BELOW_CROWN_MM, type WantedHead } from "../../shape/wanted-head.ts";

/**
 * How far the face of a head lies from the face of the wanted one, mm on one side, where it is farthest along the
 * straight of the points; below zero where the head is the narrower there. Both are laid on each other at the level of
 * the tips. Derived: between the two ends of the straight the distance changes evenly, so it is largest at one of them.
 */
export function apartMm(
  head: { readonly spreadMm: number; readonly halfAngleRad: number },
  { halfSpreadMm, halfAngleRad, depthMm }: WantedHead,
): number {
  const straight = Math.max(0, depthMm - STRAIGHT_BELOW_CROWN_MM);
  const atTips = head.spreadMm / 2 - halfSpreadMm;
  const above = atTips - straight * (tan(head.halfAngleRad) - tan(halfAngleRad));
  return Math.abs(atTips) >= Math.abs(above) ? atTips : above;
}
