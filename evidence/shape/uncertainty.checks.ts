import { spreadOf } from "../../core/src/engine/quantile.ts";
import { drawNormal, drawUniform } from "../../core/src/engine/random.ts";
import type { Check } from "../published/checks.ts";
import { published } from "../published/published.ts";
import {
  combined,
  contributions,
  effectiveFreedom,
  type Input,
  studentFactor,
  withProducts,
} from "./propagation.ts";

const DRAWS = 100_000;
const SEED = 41;
const ROOT_12 = Math.sqrt(12);

/** Values of the sum of four inputs, each drawn by the program's own draws. */
function sums(terms: readonly ((index: number) => number)[]): Float64Array {
  return Float64Array.from({ length: DRAWS }, (_, index) =>
    terms.reduce((sum, term) => sum + term(index), 0),
  );
}
const normal = (name: string) => (index: number) => drawNormal(SEED, index, name);
const rectangular = (name: string, sd: number) => (index: number) =>
  sd * ROOT_12 * (drawUniform(SEED, index, name) - 0.5);
const NAMES = ["one", "two", "three", "four"] as const;

function deviation(values: Float64Array): number {
  const mean = values.reduce((sum, one) => sum + one, 0) / values.length;
  return Math.sqrt(values.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (values.length - 1));
}

/** The end gauge of the guide: ls, d, alpha_s, theta, d_alpha, d_theta. */
const GAUGE: readonly Input[] = [
  { value: 50000623, u: 25, freedom: 18 },
  { value: 215, u: 9.7, freedom: 25.6 },
  { value: 11.5e-6, u: 1.2e-6, freedom: Number.POSITIVE_INFINITY },
  { value: -0.1, u: 0.41, freedom: Number.POSITIVE_INFINITY },
  { value: 0, u: 5.8e-7, freedom: 50 },
  { value: 0, u: 0.029, freedom: 2 },
];
const gauge = ([ls = 0, d = 0, alphaS = 0, theta = 0, dAlpha = 0, dTheta = 0]: readonly number[]) =>
  ls + d - ls * (dAlpha * theta + alphaS * dTheta);

export const checks: readonly Check[] = [
  {
    name: "first-order propagation: the end gauge of the guide",
    run: () => {
      const parts = contributions(gauge, GAUGE);
      const u = combined(parts);
      const k = studentFactor(0.99, Math.floor(effectiveFreedom(parts, GAUGE)));
      published("gum-h1", {
        l_nm: gauge(GAUGE.map(({ value }) => value)),
        uc_nm: u,
        contributions_nm: parts,
        v_eff: effectiveFreedom(parts, GAUGE),
        k99_16: k,
        U99_nm: k * u,
        uc_with_second_order_nm: withProducts(gauge, GAUGE),
      });
    },
  },
  {
    name: "effective degrees of freedom of four equal parts",
    run: () =>
      published(
        "gum-ws",
        effectiveFreedom(
          [1, 1, 1, 1],
          Array.from({ length: 4 }, () => ({ value: 0, u: 1, freedom: 10 })),
        ),
      ),
  },
  {
    name: "draws: sums of four normal and rectangular inputs",
    run: () => {
      const cases = [
        sums(NAMES.map(normal)),
        sums(NAMES.map((name) => rectangular(name, 1))),
        sums(NAMES.map((name, i) => rectangular(name, i === 3 ? 10 : 1))),
      ] as const;
      published("gums1-9.2", {
        u: cases.map(deviation),
        interval95_normal: spreadOf(cases[0]),
        interval95_rect: spreadOf(cases[1]),
        interval95_u10: spreadOf(cases[2]),
        GUF_interval_u10: 1.959964 * combined([1, 1, 1, 10]),
      });
    },
  },
];
