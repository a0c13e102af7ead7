import type { ContactProblem, Equilibrium } from "@treewright/core/engine/contact/problem.ts";

const DEGREE = Math.PI / 180;

/** An answer in the words of the model cases. Contact counts p above 0. */
export function summaryOf(problem: ContactProblem, rest: Equilibrium) {
  const { cells } = problem;
  const thirds = [0, 1, 2].map(() => ({ force: 0, area: 0, loaded: 0 }));
  let max = 0;
  let inner = 0;
  rest.pressure.forEach((p, i) => {
    const area = cells.area[i] ?? 0;
    const third = thirds[cells.third[i] ?? 0];
    if (!third) return;
    third.force += p * area;
    third.area += area;
    third.loaded += p > 0 ? area : 0;
    max = Math.max(max, p);
    inner += cells.inner[i] === 1 ? p * area : 0;
  });
  const sum = (of: (third: { force: number; loaded: number }) => number): number =>
    thirds.reduce((total, third) => total + of(third), 0);
  const normal = sum((third) => third.force);
  return {
    heaveMm: rest.pose.heave,
    headUpDeg: rest.pose.pitch / DEGREE,
    rollDeg: rest.pose.roll / DEGREE,
    maxKPa: 1000 * max,
    areaCm2: sum((third) => third.loaded) / 100,
    normalOverLoad: rest.normalOverLoad,
    unbalancedXN: rest.unbalancedXN,
    meanMaskKPa: thirds.map((third) => (1000 * third.force) / third.area),
    meanLoadedKPa: thirds.map((third) => (third.loaded > 0 ? (1000 * third.force) / third.loaded : 0)),
    innerShare: inner / normal,
    copXMm: normalCentreX(problem, rest),
    stable: rest.smallestEigenvalue > 0,
    compressionMax: rest.compressionMax,
  };
}

/**
 * Centre of the pressures' vertical part without friction, as the model cases count it; `across` along y. The
 * program's own `centreX` is of the whole vertical force.
 */
function normalCentreX({ cells, pivot, slide, surface }: ContactProblem, rest: Equilibrium): number {
  const { pitch, roll } = rest.pose;
  const numbers = (): Float64Array => new Float64Array(1);
  const out = { z: numbers(), zx: numbers(), zy: numbers(), zxx: numbers(), zxy: numbers(), zyy: numbers() };
  let sum = 0;
  let moment = 0;
  rest.pressure.forEach((p, i) => {
    if (p === 0) return;
    const [px, py, pz] = [
      (cells.x[i] ?? 0) - pivot.x,
      (cells.y[i] ?? 0) - pivot.y,
      (cells.z[i] ?? 0) - pivot.z,
    ];
    const [ry, rz] = [py * Math.cos(roll) - pz * Math.sin(roll), py * Math.sin(roll) + pz * Math.cos(roll)];
    const x = px * Math.cos(pitch) + rz * Math.sin(pitch) + pivot.x + slide.x;
    surface(1, Float64Array.of(x), Float64Array.of(ry + pivot.y + slide.y), out);
    const force = (p * (cells.area[i] ?? 0)) / Math.hypot(1, out.zx[0] ?? 0, out.zy[0] ?? 0);
    sum += force;
    moment += force * x;
  });
  return moment / sum;
}
