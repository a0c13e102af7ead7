import { exp, log, pow } from "../number/index.ts";
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

/** Reversals at which elastic and plastic strain are alike. */
export const transitionReversals = ({ modulusMPa, sfMPa, b, ef, c }: StrainLife): number =>
  pow((ef * modulusMPa) / sfMPa, 1 / (b - c));

/** Part of its life that a row of single reversals costs (Palmgren and Miner: each 1 / reversals at its amplitude). */
export const damageOf = (life: StrainLife, amplitudes: readonly number[]): number =>
  amplitudes.reduce((sum, one) => (one > 0 ? sum + 1 / reversalsAt(life, one) : sum), 0);

/** Exponent and factor of plastic strain = ef (2N)^c by least squares of log reversals on log strain. */
export function fitPlasticLife(plasticStrain: readonly number[], reversals: readonly number[]) {
  const x = plasticStrain.map((one) => log(one));
  const y = reversals.map((one) => log(one));
  const mean = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0) / values.length;
  const mx = mean(x);
  const my = mean(y);
  const sxx = x.reduce((sum, one) => sum + (one - mx) * (one - mx), 0);
  const sxy = x.reduce((sum, one, i) => sum + (one - mx) * ((y[i] ?? 0) - my), 0);
  const c = sxx / sxy;
  return { c, ef: exp(mx - c * my) };
}
