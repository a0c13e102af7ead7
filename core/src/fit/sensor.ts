import type { StripCells } from "../engine/contact/strip-cells.ts";
import type { Mesh } from "./panel-cells.ts";

/** Side of the square over which a sensor mat tells one pressure, mm: about 4 cm2, as the studies' mats do. */
const SENSOR_MM = 20;

/**
 * Highest mean over any square of about 4 cm2 by third and side (third * 2 + side), in the unit of `pressure`. A cell's own
 * peak is never held against a sensor's. On a mesh coarser than the square, the cells themselves. The square lies within
 * the panel, and counts for the third of its middle.
 */
export function sensorPeaks(cells: StripCells, pressure: Float64Array, { nx, nv }: Mesh): Float64Array {
  const peaks = new Float64Array(6);
  const long = Math.abs(cells.x[nv]! - cells.x[0]!);
  const rows = Math.min(nx, Math.max(1, Math.round(SENSOR_MM / long)));
  for (let side = 0; side < 2; side++) {
    const from = side * nx * nv;
    for (let i = 0; i + rows <= nx; i++) {
      const first = from + i * nv;
      const columns = Math.min(nv, Math.max(1, Math.round((SENSOR_MM * long) / cells.area[first]!)));
      const into = 2 * cells.third[first + (rows >> 1) * nv]! + side;
      for (let j = 0; j + columns <= nv; j++) {
        const mean = meanOver(cells.area, pressure, first + j, rows, columns, nv);
        if (mean > peaks[into]!) peaks[into] = mean;
      }
    }
  }
  return peaks;
}

function meanOver(
  area: Float64Array,
  pressure: Float64Array,
  first: number,
  rows: number,
  columns: number,
  nv: number,
): number {
  let [force, size] = [0, 0];
  for (let i = 0; i < rows; i++) {
    for (let k = first + i * nv; k < first + i * nv + columns; k++) {
      force += pressure[k]! * area[k]!;
      size += area[k]!;
    }
  }
  return force / size;
}
