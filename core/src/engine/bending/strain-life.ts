import { exp, log } from "../number/index.ts";
import { rootOf } from "./root.ts";

/** Constants of Basquin and of Coffin and Manson for one steel: strain amplitude = (sf / E) (2N)^b + ef (2N)^c. */
export interface StrainLife {
  readonly modulusMPa: number;
  readonly sfMPa: number;
  readonly b: number;
  readonly ef: number;
  readonly c: number;
}

/** Mild steel 1015, normalised. Published: ASM Metals Reference Book (1983); ef and c from memory. */
export const MILD_STEEL_LIFE: StrainLife = { modulusMPa: 207_000, sfMPa: 827, b: -0.11, ef: 0.95, c: -0.64 };

/** Reversals of a strain amplitude until a polished coupon cracks. Amplitude above 0. */
export function reversalsAt({ modulusMPa, sfMPa, b, ef, c }: StrainLife, amplitude: number): number {
  // In the logarithm of the reversals the logarithm of the amplitude falls without a turn.
  const x = rootOf(
    (ln) => {
      const elastic = (sfMPa / modulusMPa) * exp(b * ln);
      const plastic = ef * exp(c * ln);
      const at = elastic + plastic;
      return { y: log(amplitude) - log(at), slope: -(b * elastic + c * plastic) / at };
    },
    6,
    1e-12,
    10,
  );
  if (x === undefined) throw new RangeError(`no life at a strain amplitude of ${amplitude}`);
  return exp(x);
}

/** Part of its life that a row of single reversals costs (Palmgren and Miner: each 1 / reversals at its amplitude). */
export const damageOf = (life: StrainLife, amplitudes: readonly number[]): number =>
  amplitudes.reduce((sum, one) => (one > 0 ? sum + 1 / reversalsAt(life, one) : sum), 0);
