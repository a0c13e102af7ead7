import type { SampleSurface } from "../surface.ts";
import { FRAME_SIZE, frameOf } from "./frame.ts";
import type { Cells, ContactProblem, Pose, Vector } from "./problem.ts";
import type { Room } from "./room.ts";

/**
 * Kernel: carries the middle one of every `step` cells to the pose in `room.frame` and reads the surface there, into
 * `room.x`, `room.y` and `room.sample`. Returns how many were read.
 */
export function readSurface(
  cells: Cells,
  pivot: Vector,
  surface: SampleSurface,
  room: Room,
  step: number,
): number {
  const count = carryCells(cells, pivot, room.frame, step, room);
  surface(count, room.x, room.y, room.sample);
  return count;
}

/** Places in the plane, mm. */
export interface Places {
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** Where each cell lies in the plane at a pose. */
export function placesAt(problem: ContactProblem, { heave, pitch, roll }: Pose): Places {
  const { cells, pivot } = problem;
  const frame = new Float64Array(FRAME_SIZE);
  frameOf(problem, Float64Array.of(heave, pitch, roll), frame);
  const places = { x: new Float64Array(cells.n), y: new Float64Array(cells.n) };
  carryCells(cells, pivot, frame, 1, places);
  return places;
}

/** Kernel: the middle one of every `step` cells at the pose in `f`. Returns how many. */
function carryCells(cells: Cells, pivot: Vector, f: Float64Array, step: number, { x, y }: Places): number {
  let count = 0;
  for (let i = step >> 1; i < cells.n; i += step, count++) {
    const px = cells.x[i]! - pivot.x;
    const py = cells.y[i]! - pivot.y;
    const pz = cells.z[i]! - pivot.z;
    x[count] = f[0]! * px + f[1]! * py + f[2]! * pz + f[9]!;
    y[count] = f[3]! * px + f[4]! * py + f[5]! * pz + f[10]!;
  }
  return count;
}

/**
 * Kernel: heave at which the cells, were they springs that also pull, would carry `loadN` at this rotation
 * (derived: sum of k A (B - Z - heave) nz = load). Contact only pushes, so the true heave lies above it: a
 * start from which Newton comes up without losing touch.
 */
export function sunkHeave(cells: Cells, pivot: Vector, room: Room, step: number, loadN: number): number {
  const { frame: f, sample, stiffness } = room;
  let weight = 0;
  let sum = 0;
  for (let i = step >> 1, k = 0; i < cells.n; i += step, k++) {
    const px = cells.x[i]! - pivot.x;
    const py = cells.y[i]! - pivot.y;
    const z = f[6]! * px + f[7]! * py + f[8]! * (cells.z[i]! - pivot.z) + pivot.z;
    const bx = sample.zx[k]!;
    const by = sample.zy[k]!;
    const w = (stiffness[i]! * cells.area[i]! * step) / (1 + bx * bx + by * by);
    weight += w;
    sum += w * (sample.z[k]! - z);
  }
  return (sum - loadN) / weight;
}
