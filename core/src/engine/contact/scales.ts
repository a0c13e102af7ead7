import { loadOf } from "./check.ts";
import type { Cells, ContactProblem } from "./problem.ts";
import type { Room } from "./room.ts";

/** What a descent is measured by: load N, length mm, highest arm mm, sum of k A in N/mm. */
export interface Scales {
  readonly load: number;
  readonly length: number;
  readonly reach: number;
  readonly stiffness: number;
}

/** The scales of a problem; `room.stiffness` is filled. RangeError where all cells stand in one place. */
export function scalesOf(problem: ContactProblem, room: Room): Scales {
  const { cells, pivot } = problem;
  const { length, stiffness } = spreadOf(cells, room);
  let reach = 0;
  for (let i = 0; i < cells.n; i++) reach = Math.max(reach, Math.abs(cells.z[i]! - pivot.z));
  return { load: loadOf(problem), length, reach: reach + 0.25 * length, stiffness };
}

/** Root mean square distance of the cells from their middle, seen from above, mm; sum of k A, N/mm. */
function spreadOf({ n, x, y, area }: Cells, { stiffness }: Room): { length: number; stiffness: number } {
  let a = 0;
  let ax = 0;
  let ay = 0;
  let k = 0;
  for (let i = 0; i < n; i++) {
    a += area[i]!;
    ax += area[i]! * x[i]!;
    ay += area[i]! * y[i]!;
    k += stiffness[i]! * area[i]!;
  }
  let square = 0;
  for (let i = 0; i < n; i++) {
    const dx = x[i]! - ax / a;
    const dy = y[i]! - ay / a;
    square += area[i]! * (dx * dx + dy * dy);
  }
  const length = Math.sqrt(square / a);
  if (!(length > 0)) throw new RangeError("cells: all in one place");
  return { length, stiffness: k };
}
