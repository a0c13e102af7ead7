import type { Law } from "./problem.ts";

/**
 * Pressure (MPa) of cell i of a series of two layers that is d mm shorter.
 *
 * d = t p / (E + p / limit) + c p with c = h / E of the lower layer: a quadratic in p, whose root is taken in
 * the form that does not cancel. Derived from p = E e / (1 - e / limit) and p = E u / h.
 */
export function seriesPressure(law: Extract<Law, { kind: "series" }>, i: number, d: number): number {
  const modulus = law.upperModulus[i]!;
  const soft = 1 / law.upperLimit;
  const lower = law.lowerThickness[i]! / law.lowerModulus[i]!;
  const b = law.upperThickness[i]! + lower * modulus - soft * d;
  const ac = lower * soft * d * modulus;
  const root = Math.sqrt(b * b + 4 * ac);
  return b > 0 ? (2 * d * modulus) / (b + root) : (root - b) / (2 * lower * soft);
}

/** dp/dd at pressure p, N/mm3. */
export function seriesStiffness(law: Extract<Law, { kind: "series" }>, i: number, p: number): number {
  const modulus = law.upperModulus[i]!;
  const upper = modulus + p / law.upperLimit;
  const soft = (law.upperThickness[i]! * modulus) / (upper * upper);
  return 1 / (soft + law.lowerThickness[i]! / law.lowerModulus[i]!);
}

/** Stiffness of each of n cells at first touch into `out`; for a law without a limit it holds throughout. */
export function firstStiffness(law: Law, n: number, out: Float64Array): void {
  for (let i = 0; i < n; i++) out[i] = law.kind === "linear" ? law.stiffness[i]! : seriesStiffness(law, i, 0);
}

/** Whether pressure goes straight with d. */
export function isStraight(law: Law): boolean {
  return law.kind === "linear" || law.upperLimit === Infinity;
}

/** Thickness of both layers of cell i, mm; 0 where the law has none. */
export function thicknessOf(law: Law, i: number): number {
  return law.kind === "linear" ? 0 : law.upperThickness[i]! + law.lowerThickness[i]!;
}
