import type { Cells } from "../engine/contact/problem.ts";
import { SIDES, THIRDS } from "../terms/places.ts";
import type { PressureField, ThirdFit } from "./fit.ts";
import type { Mesh } from "./panel-cells.ts";

const KPA_PER_MPA = 1000;
const MM2_PER_CM2 = 100;

/** Pressures by third and side, as the literature reports them; the mean is over the whole region, touching or not. */
export function thirdsOf(cells: Cells, pressureMPa: Float64Array): readonly ThirdFit[] {
  const numbers = () => new Float64Array(THIRDS.length * SIDES.length);
  const [force, region, touching, max] = [numbers(), numbers(), numbers(), numbers()];
  for (let i = 0; i < cells.n; i++) {
    const into = SIDES.length * cells.third[i]! + cells.side[i]!;
    const pressure = pressureMPa[i]!;
    const area = cells.area[i]!;
    force[into] = force[into]! + pressure * area;
    region[into] = region[into]! + area;
    if (pressure > 0) touching[into] = touching[into]! + area;
    if (pressure > max[into]!) max[into] = pressure;
  }
  const total = force.reduce((sum, one) => sum + one, 0);
  return THIRDS.flatMap((third, index) =>
    SIDES.map((side, sideIndex) => {
      const from = SIDES.length * index + sideIndex;
      return {
        third,
        side,
        meanKPa: (force[from]! / region[from]!) * KPA_PER_MPA,
        maxKPa: max[from]! * KPA_PER_MPA,
        areaCm2: touching[from]! / MM2_PER_CM2,
        share: force[from]! / total,
      };
    }),
  );
}

/** The map of pressures for drawing: near side first, then along, then across from the inner edge. */
export function fieldOf(cells: Cells, pressureMPa: Float64Array, mesh: Mesh): PressureField {
  return {
    ...mesh,
    xMm: Float64Array.from(cells.x),
    yMm: Float64Array.from(cells.y),
    kPa: pressureMPa.map((pressure) => pressure * KPA_PER_MPA),
  };
}
