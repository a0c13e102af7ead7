import { exp } from "../engine/number/index.ts";
import { drawNormal, drawUniform } from "../engine/random.ts";
import type { Particle, PressBelief } from "./belief.ts";
import { FORCE_NOISE } from "./doubts.ts";
import { type Known, type MeasuredPass, travelOf } from "./measured-pass.ts";
import { type Pressed, pressed } from "./pressed.ts";

/** What a pass taught. */
export interface Learned {
  readonly belief: PressBelief;
  /** Heads that still count, of all that were believed: 1 / sum of squared weights. */
  readonly count: number;
  /** No head that was believed does what was read, within four of its standard uncertainties. */
  readonly unlike: boolean;
}

/** Heads kept from one pass to the next. With 400 intervals covered some parts in a hundred too little (simulated jobs). */
const HEADS = 1200;
/** Best agreement that a belief must hold: squared, a reading's standard uncertainty each. */
const UNLIKE = 16;

/** Bayes: every head is put through the pass, with chance of its own, weighed by what was read, and drawn anew by weight. */
export function learn(belief: PressBelief, pass: MeasuredPass): Learned {
  const { seed, passes } = belief;
  const after = belief.particles.map((head, i) => through(head, pass, passes, seed, i));
  const misfits = after.map(({ head, press }) => misfit(head, press, pass));
  const least = misfits.reduce((best, one) => Math.min(best, one), Number.POSITIVE_INFINITY);
  const weights = misfits.map((one) => exp((least - one) / 2));
  const sum = weights.reduce((total, one) => total + one, 0);
  const squares = weights.reduce((total, one) => total + one * one, 0);
  const drawn = byWeight(weights, sum, HEADS, drawUniform(seed, passes, "first head drawn"));
  const picked = drawn.map((i) => after[i]?.head).filter((one) => one !== undefined);
  const particles = picked.map((head) => restedTo(head, pass));
  return {
    belief: { ...belief, passes: passes + 1, particles },
    count: (sum * sum) / squares,
    unlike: least > UNLIKE * readingsOf(pass),
  };
}

function through(head: Particle, pass: MeasuredPass, before: number, seed: number, i: number) {
  const noise = (name: string) => drawNormal(seed, i * 64 + before, `${name} of a pass`);
  const { value, u } = travelOf(pass);
  const error = u * noise("travel");
  const travelMm =
    "both" in pass.travel
      ? value + error
      : ([pass.travel.near.value + error / 2, pass.travel.off.value + error / 2] as const);
  const press = pressed(head, { travelMm, holdMin: pass.holdMin, before });
  const keptMm = [
    press.keptMm[0] + press.keptU[0] * noise("near kept"),
    press.keptMm[1] + press.keptU[1] * noise("off kept"),
  ] as const;
  return { head: { ...head, keptMm, heldMm: press.heldMm }, press };
}

const off = ({ value, u }: Known, found: number, more = 0): number =>
  ((value - found) * (value - found)) / (u * u + more * more);

/** Sum of squared differences, each by its own uncertainty. */
function misfit(head: Particle, press: Pressed, pass: MeasuredPass): number {
  const { keptMm, curve, datumMm, gauge } = head;
  const both = keptMm[0] + keptMm[1];
  let sum = off(pass.keptTips, both + datumMm);
  if (pass.keptUpper) sum += off(pass.keptUpper, both * curve.upperPerMm + datumMm);
  if (pass.turnNear) sum += off(pass.turnNear, keptMm[0] * curve.turnPerMm);
  if (pass.turnOff) sum += off(pass.turnOff, keptMm[1] * curve.turnPerMm);
  if (pass.forceN) sum += off(pass.forceN, press.forceN * gauge, FORCE_NOISE * pass.forceN.value);
  return sum;
}

const readingsOf = (pass: MeasuredPass): number =>
  [pass.keptTips, pass.keptUpper, pass.turnNear, pass.turnOff, pass.forceN].filter(Boolean).length;

/** Systematic draw: the place of each of `count` evenly spaced parts of all weight. */
function byWeight(weights: readonly number[], sum: number, count: number, start: number): number[] {
  const drawn: number[] = [];
  let [i, upTo] = [0, weights[0] ?? 0];
  for (let k = 0; k < count; k++) {
    const part = ((k + start) / count) * sum;
    while (upTo < part && i < weights.length - 1) upTo += weights[++i] ?? 0;
    drawn.push(i);
  }
  return drawn;
}

/** A day later the head stands where it was read then: what walked back is taken from both halves alike. */
function restedTo(head: Particle, { keptNextDay, keptTips }: MeasuredPass): Particle {
  if (keptNextDay === undefined) return head;
  const back = (keptTips.value - keptNextDay.value) / 2;
  return { ...head, keptMm: [head.keptMm[0] - back, head.keptMm[1] - back] };
}
