import type { Equilibrium } from "../engine/contact/problem.ts";
import type { GaitFit, RiddenThird } from "./fit.ts";
import type { SittingProblem } from "./problem.ts";
import type { AtPeak } from "./ridden.ts";
import { sensorPeaks } from "./sensor.ts";
import { thirdsOf } from "./thirds.ts";

const KPA_PER_MPA = 1000;
const MM2_PER_CM2 = 100;

/** A gait at its peak as it is handed on: thirds by side, and what touches the ridge. */
export function gaitFit(problem: SittingProblem, { ridden, times, found }: AtPeak): GaitFit {
  const { gait, says } = ridden;
  const named = { gait, says, times };
  if (!found.ok) return { ...named, ok: false, why: found.why };
  return { ...named, ok: true, thirds: riddenThirds(problem, found), ridgeCm2: ridgeCm2(problem, found) };
}

function riddenThirds(problem: SittingProblem, { pressure }: Equilibrium): readonly RiddenThird[] {
  const peaks = sensorPeaks(problem.cells, pressure, problem.mesh);
  return thirdsOf(problem.cells, pressure).map((third, i) => ({
    ...third,
    sensorKPa: (peaks[i] ?? 0) * KPA_PER_MPA,
  }));
}

/** Area over the ridge that presses, cm2: any of it is a touch. */
export function ridgeCm2({ cells, onRidge }: SittingProblem, { pressure }: Equilibrium): number {
  let area = 0;
  for (let i = 0; i < cells.n; i++) if (onRidge[i] === 1 && pressure[i]! > 0) area += cells.area[i]!;
  return area / MM2_PER_CM2;
}
