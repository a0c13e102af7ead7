/** One input of a measurement model: its estimate, standard uncertainty and degrees of freedom. */
export interface Input {
  readonly value: number;
  readonly u: number;
  readonly freedom: number;
}
export type Model = (values: readonly number[]) => number;

const at = (inputs: readonly Input[], shifts: readonly number[]) =>
  inputs.map(({ value }, i) => value + (shifts[i] ?? 0));
const alone = (n: number, i: number, by: number) => Array.from({ length: n }, (_, k) => (k === i ? by : 0));

/** What each input adds to the result's standard uncertainty: slope (by central difference over one u) times u. JCGM 100:2008, 5.1.3. */
export function contributions(model: Model, inputs: readonly Input[]): number[] {
  const n = inputs.length;
  return inputs.map(
    ({ u }, i) => Math.abs(model(at(inputs, alone(n, i, u))) - model(at(inputs, alone(n, i, -u)))) / 2,
  );
}

export const combined = (parts: readonly number[]): number =>
  Math.sqrt(parts.reduce((sum, part) => sum + part * part, 0));

/** Effective degrees of freedom, Welch and Satterthwaite. JCGM 100:2008, G.4.1. */
export function effectiveFreedom(parts: readonly number[], inputs: readonly Input[]): number {
  const sum = parts.reduce(
    (total, part, i) => total + part ** 4 / (inputs[i]?.freedom ?? Number.POSITIVE_INFINITY),
    0,
  );
  return combined(parts) ** 4 / sum;
}

/** Standard uncertainty with the products of two inputs' doubts as well. JCGM 100:2008, note to 5.1.2, for models without pure second derivatives. */
export function withProducts(model: Model, inputs: readonly Input[]): number {
  const n = inputs.length;
  const products: number[] = [];
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const corner = (a: number, b: number) =>
        model(
          at(
            inputs,
            Array.from({ length: n }, (_, k) =>
              k === i ? a * (inputs[i]?.u ?? 0) : k === j ? b * (inputs[j]?.u ?? 0) : 0,
            ),
          ),
        );
      products.push((corner(1, 1) - corner(1, -1) - corner(-1, 1) + corner(-1, -1)) / 4);
    }
  }
  return combined([...contributions(model, inputs), ...products]);
}

/** Coverage factor of Student's t: the integral of its density from -k to k is `part`. By Simpson's rule and halving. */
export function studentFactor(part: number, freedom: number): number {
  const shape = (t: number) => (1 + (t * t) / freedom) ** (-(freedom + 1) / 2);
  const integral = (to: number) => {
    const n = 4000;
    let sum = shape(0) + shape(to);
    for (let i = 1; i < n; i++) sum += (i % 2 ? 4 : 2) * shape((to * i) / n);
    return (sum * to) / n / 3;
  };
  const whole = integral(400);
  let [lo, hi] = [0, 60];
  for (let i = 0; i < 50; i++) {
    const middle = (lo + hi) / 2;
    if (integral(middle) / whole < part) lo = middle;
    else hi = middle;
  }
  return lo;
}
