import type { ContactProblem, Equilibrium } from "@treewright/core/engine/contact/problem.ts";

const DEGREE = Math.PI / 180;

/** An answer in the words of the model cases. Contact counts p above 0. */
export function summaryOf({ cells }: ContactProblem, rest: Equilibrium) {
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
    copXMm: rest.centreX,
    stable: rest.smallestEigenvalue > 0,
    compressionMax: rest.compressionMax,
  };
}
