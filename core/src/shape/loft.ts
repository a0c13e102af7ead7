import { type BySide, type ByStation, STATIONS } from "../terms/places.ts";
import { endsOf, NODES, type SideForm, STEEPEST, slopeOf } from "./side-form.ts";

/** One side of the lofted back at one x: heights and slopes over rising distances from the midline, then straight on. */
export interface Row {
  readonly u: Float64Array;
  readonly z: Float64Array;
  readonly slope: Float64Array;
  /** Nodes in use: up to the end, or to where it becomes too steep or turns back. */
  readonly n: number;
  readonly endSlope: number;
  readonly about: SideForm["about"];
}

export type Sides = ByStation<BySide<SideForm>>;

/**
 * The side between the stations: places of the same part of the trace's length belong together, and their
 * places and tangents are weighted sums over the stations.
 */
export function loftRow(sides: Sides, side: "near" | "off", weights: ByStation<number>): Row {
  const u = new Float64Array(NODES);
  const z = new Float64Array(NODES);
  const du = new Float64Array(NODES);
  const dz = new Float64Array(NODES);
  let lengthMm = 0;
  for (const station of STATIONS) {
    const form = sides[station][side];
    const weight = weights[station];
    lengthMm += weight * form.lengthMm;
    for (let i = 0; i < NODES; i++) {
      u[i]! += weight * form.u[i]!;
      z[i]! += weight * form.z[i]!;
      du[i]! += weight * form.lengthMm * form.du[i]!;
      dz[i]! += weight * form.lengthMm * form.dz[i]!;
    }
  }
  const n = usable(u, du, dz);
  const slope = Float64Array.from({ length: n }, (_, i) => Math.max(-STEEPEST, dz[i]! / du[i]!));
  const { endSlope, about } = endsOf(u, z, lengthMm);
  return { u, z, slope, n, endSlope: n < NODES ? -STEEPEST : endSlope, about };
}

function usable(u: Float64Array, du: Float64Array, dz: Float64Array): number {
  for (let i = 1; i < NODES; i++) {
    if (u[i]! <= u[i - 1]! || du[i]! <= 0 || slopeOf(du[i]!, dz[i]!) === -STEEPEST) return i;
  }
  return NODES;
}

/** Height and slope at rising distances `at`, written into `height` and `slope`. Cubic between the nodes (Hermite). */
export function readRow(row: Row, at: Float64Array, height: Float64Array, slope: Float64Array): void {
  let i = 0;
  for (let k = 0; k < at.length; k++) {
    const last = row.n - 1;
    while (i < last && row.u[i + 1]! < at[k]!) i++;
    if (i >= last) {
      height[k] = row.z[last]! + row.endSlope * (at[k]! - row.u[last]!);
      slope[k] = row.endSlope;
    } else {
      const h = row.u[i + 1]! - row.u[i]!;
      const t = (at[k]! - row.u[i]!) / h;
      const rise = row.z[i + 1]! - row.z[i]!;
      const [a, b] = [h * row.slope[i]! - rise, rise - h * row.slope[i + 1]!];
      height[k] = row.z[i]! + t * rise + t * (1 - t) * (a * (1 - t) + b * t);
      slope[k] = (rise + (1 - 2 * t) * (a * (1 - t) + b * t) + t * (1 - t) * (b - a)) / h;
    }
  }
}
