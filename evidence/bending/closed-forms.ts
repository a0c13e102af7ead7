/*
 * Bending of one rectangular layer in closed form, and what a handbook says of strain and life beside it: a second way,
 * itself held against the published values where the engine has no such law. Published: Kalpakjian and Schmid,
 * Manufacturing Processes for Engineering Materials; Shigley, Mechanical Engineering Design; both from memory.
 */

/** Moment at a curvature of a rectangle whose stress is K strain^n, and the part of the bend that is kept. */
export function powerLawBend(
  b: number,
  h: number,
  strength: number,
  n: number,
  modulus: number,
  curvature: number,
): { readonly moment: number; readonly keptPart: number } {
  const moment = (2 * strength * b * (h / 2) ** (n + 2) * curvature ** n) / (n + 2);
  return { moment, keptPart: 1 - moment / (modulus * ((b * h * h * h) / 12) * curvature) };
}

/** A wide plate bends in plane strain: modulus E / (1 - nu^2), yield 2 Y / sqrt 3. */
export const planeStrain = (modulus: number, yieldStress: number, poisson: number) => ({
  modulus: modulus / (1 - poisson * poisson),
  yieldStress: (2 * yieldStress) / Math.sqrt(3),
});

/** Least inside radius over thickness for a metal that shrinks by so many per cent of its area before it tears. */
export const leastRadius = (areaReductionPercent: number): number =>
  Math.max(0, 50 / areaReductionPercent - 1);

/** Two thin plates at a lever each side of an elastic core, past yield: moment, and curvature left when let go. Plates' own bending left out. */
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

/** Exponent and factor of plastic strain = ef (2N)^c by least squares of log reversals on log strain. */
export function fitPlasticLife(plasticStrain: readonly number[], reversals: readonly number[]) {
  const x = plasticStrain.map(Math.log);
  const y = reversals.map(Math.log);
  const mean = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0) / values.length;
  const [mx, my] = [mean(x), mean(y)];
  const sxx = x.reduce((sum, one) => sum + (one - mx) * (one - mx), 0);
  const sxy = x.reduce((sum, one, i) => sum + (one - mx) * ((y[i] ?? 0) - my), 0);
  const c = sxx / sxy;
  return { c, ef: Math.exp(mx - c * my) };
}
