import { pow } from "../number/index.ts";
import { rootOf } from "./root.ts";

/*
 * Bending of one rectangular layer in closed form. Published: Kalpakjian and Schmid, Manufacturing Processes for
 * Engineering Materials; Beer and Johnston, Mechanics of Materials; Gardiner, Trans. ASME 79 (1957).
 */

/** Part of a bend that is kept once it is let go: 1 - 3 X + 4 X^3, X = R Y / (E T); nothing from first yield (X = 1/2) on down. */
export function keptPart(radius: number, yieldStress: number, modulus: number, thickness: number): number {
  const x = (radius * yieldStress) / (modulus * thickness);
  return x >= 0.5 ? 0 : 1 - 3 * x + 4 * x * x * x;
}

/** The same with a hardening tangent: it springs back more. Derived. */
export function keptPartHardening(
  radius: number,
  yieldStress: number,
  modulus: number,
  thickness: number,
  tangent: number,
): number {
  return (1 - tangent / modulus) * keptPart(radius, yieldStress, modulus, thickness);
}

/** Moment of an elastic, then perfectly plastic rectangle as part of its yield moment. `core`: half-height that is still elastic, as part of the whole half-height (0 to 1). */
export const momentOverYield = (core: number): number => 1.5 * (1 - (core * core) / 3);

/** The elastic half-height for a moment of 1 to 1.5 yield moments; 1 below. */
export const elasticCore = (moment: number): number => (moment <= 1 ? 1 : Math.sqrt(3 - 2 * moment));

/** Moment at a curvature of a rectangle b x h that yields at `yieldStress` and hardens along `tangent`. Derived. */
export function momentHardening(
  b: number,
  h: number,
  yieldStress: number,
  modulus: number,
  tangent: number,
  curvature: number,
): number {
  const inertia = (b * h * h * h) / 12;
  const first = (2 * yieldStress) / (modulus * h);
  if (curvature <= first) return modulus * inertia * curvature;
  const yieldMoment = (yieldStress * b * h * h) / 6;
  const eta = tangent / modulus;
  return (1 - eta) * yieldMoment * momentOverYield(first / curvature) + eta * modulus * inertia * curvature;
}

/** Moment at a curvature of a rectangle whose stress is K strain^n, and the part of the bend that is kept. */
export function powerLawBend(
  b: number,
  h: number,
  strength: number,
  n: number,
  modulus: number,
  curvature: number,
): { readonly moment: number; readonly keptPart: number } {
  const moment = (2 * strength * b * pow(h / 2, n + 2) * pow(curvature, n)) / (n + 2);
  return { moment, keptPart: 1 - moment / (modulus * ((b * h * h * h) / 12) * curvature) };
}

/** A wide plate bends in plane strain: modulus E / (1 - nu^2), yield 2 Y / sqrt 3. */
export const planeStrain = (modulus: number, yieldStress: number, poisson: number) => ({
  modulus: modulus / (1 - poisson * poisson),
  yieldStress: (2 * yieldStress) / Math.sqrt(3),
});

/** Engineering strain of the outer face, bent to an inside radius. */
export const outerStrain = (radius: number, thickness: number): number => 1 / ((2 * radius) / thickness + 1);

/** Least inside radius over thickness for a metal that shrinks by so many per cent of its area before it tears. */
export const leastRadius = (areaReductionPercent: number): number =>
  Math.max(0, 50 / areaReductionPercent - 1);

/** Two thin plates at a lever d each side of an elastic core, past yield: moment, and curvature left when let go. Derived; plates' own bending left out. */
export function thinPlates(
  coreStiffness: number,
  plate: {
    readonly modulus: number;
    readonly yieldStress: number;
    readonly area: number;
    readonly lever: number;
  },
  composite: number,
  curvature: number,
): { readonly moment: number; readonly kept: number; readonly yieldCurvature: number } {
  const { modulus, yieldStress, area, lever } = plate;
  const yieldCurvature = yieldStress / (modulus * composite * lever);
  const carried = Math.min(1, curvature / yieldCurvature);
  const moment = coreStiffness * curvature + 2 * yieldStress * carried * area * lever;
  const elastic = coreStiffness + 2 * composite * modulus * area * lever * lever;
  return { moment, kept: curvature - moment / elastic, yieldCurvature };
}

/** The bend to make so that `kept` is left, of one layer that yields and does not harden; both are changes of curvature, 1/length. */
export function bendFor(kept: number, yieldStress: number, modulus: number, thickness: number): number {
  const first = (2 * yieldStress) / (modulus * thickness);
  const left = (bend: number) => bend * keptPart(1 / bend, yieldStress, modulus, thickness) - kept;
  // No more than one and a half of the first yield ever springs back.
  const bend = rootOf((at) => ({ y: left(at), slope: 1 }), kept + first, kept * 1e-13, first);
  if (bend === undefined) throw new RangeError(`no bend leaves ${kept}`);
  return bend;
}
