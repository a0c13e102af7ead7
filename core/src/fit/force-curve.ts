import { cos, PI, pow } from "../engine/number/index.ts";

/** Peak up to which the force swings evenly about the weight; over it the force would leave the back, and beats narrow instead. */
const EVEN_UP_TO = 2;
/** Places at which a beat is summed. A beat is periodic: the error is far below a digit. */
const SUMMED = 128;
const HALVINGS = 44;
/** Narrowest beat: a peak of 8 times the weight; nothing published comes near. */
const NARROWEST = 60;

/**
 * Force over one beat of the stride, in times the weight: `phase` 0 and 1 at the peak. Assumption: the curve's form; an
 * even swing up to twice the weight, above that the power of a raised cosine. What is not assumed is its average over
 * the beat, which is the weight: the back carries it, whatever the gait. `peak`: at least 1.
 */
export function forceCurve(peak: number): (phase: number) => number {
  if (!(peak >= 1)) throw new RangeError(`peak: ${peak} is below the weight`);
  if (peak <= EVEN_UP_TO) return (phase) => 1 + (peak - 1) * cos(2 * PI * phase);
  const narrow = narrowness(1 / peak);
  return (phase) => peak * beat(phase, narrow);
}

/** Part of a beat in which the force is under `level` times the weight. */
export function partUnder(curve: (phase: number) => number, level: number): number {
  let under = 0;
  for (let i = 0; i < SUMMED; i++) if (curve((i + 0.5) / SUMMED) < level) under += 1;
  return under / SUMMED;
}

const beat = (phase: number, narrow: number): number => {
  const raised = (1 + cos(2 * PI * phase)) / 2;
  return raised <= 0 ? 0 : pow(raised, narrow);
};

function average(narrow: number): number {
  let sum = 0;
  for (let i = 0; i < SUMMED; i++) sum += beat((i + 0.5) / SUMMED, narrow);
  return sum / SUMMED;
}

/** The power whose beat has this average; the narrower the smaller. */
function narrowness(wanted: number): number {
  let [lo, hi] = [1, NARROWEST];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (lo + hi) / 2;
    if (average(middle) > wanted) lo = middle;
    else hi = middle;
  }
  return (lo + hi) / 2;
}
