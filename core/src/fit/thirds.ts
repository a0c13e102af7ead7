import type { Cells } from "../engine/contact/problem.ts";
import { SIDES } from "../terms/places.ts";
import type { PressureField, ThirdFit } from "./fit.ts";
import type { Mesh } from "./panel-cells.ts";

const KPA_PER_MPA = 1000;
const MM2_PER_CM2 = 100;
const THIRDS = ["front", "middle", "rear"] as const;

/** Pressures by third and side, as the literature reports them; the mean is over the whole region, touching or not. */
export function thirdsOf(cells: Cells, pressureMPa: Float64Array): readonly ThirdFit[] {
  let total = 0;
  for (let i = 0; i < cells.n; i++) total += pressureMPa[i]! * cells.area[i]!;
  return THIRDS.flatMap((third, index) =>
    SIDES.map((side, sideIndex) => {
      const sum = { force: 0, region: 0, touching: 0, max: 0 };
      for (let i = 0; i < cells.n; i++) {
        if (cells.third[i] !== index || cells.side[i] !== sideIndex) continue;
        const pressure = pressureMPa[i]!;
        const area = cells.area[i]!;
        sum.force += pressure * area;
        sum.region += area;
        if (pressure > 0) sum.touching += area;
        sum.max = Math.max(sum.max, pressure);
      }
      return {
        third,
        side,
        meanKPa: (sum.force / sum.region) * KPA_PER_MPA,
        maxKPa: sum.max * KPA_PER_MPA,
        areaCm2: sum.touching / MM2_PER_CM2,
        share: sum.force / total,
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
