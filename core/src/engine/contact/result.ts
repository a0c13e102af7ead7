import type { Descent } from "./descend.ts";
import { isStraight, seriesPressure, thicknessOf } from "./law.ts";
import type { ContactProblem, Equilibrium } from "./problem.ts";
import type { Room } from "./room.ts";

/** What a pose at rest says, read off the surface under it. */
export function equilibriumOf(
  problem: ContactProblem,
  room: Room,
  q: Float64Array,
  descent: Descent,
): Equilibrium {
  const { cells, law, pivot, load } = problem;
  const { frame: f, sample, stiffness } = room;
  const pressure = new Float64Array(cells.n);
  const penetration = new Float64Array(cells.n);
  const straight = isStraight(law);
  let compressionMax = 0;
  let normal = 0;
  for (let i = 0; i < cells.n; i++) {
    const px = cells.x[i]! - pivot.x;
    const py = cells.y[i]! - pivot.y;
    const z = f[6]! * px + f[7]! * py + f[8]! * (cells.z[i]! - pivot.z) + f[11]!;
    const bx = sample.zx[i]!;
    const by = sample.zy[i]!;
    const d = (sample.z[i]! - z) / Math.sqrt(1 + bx * bx + by * by);
    penetration[i] = d;
    if (d <= 0) continue;
    const p = straight || law.kind === "linear" ? stiffness[i]! * d : seriesPressure(law, i, d);
    pressure[i] = p;
    normal += p * cells.area[i]!;
    const thickness = thicknessOf(law, i);
    if (thickness > 0) compressionMax = Math.max(compressionMax, d / thickness);
  }
  const [vertical = 0, byX = 0, byY = 0] = room.sums.contact;
  return {
    ok: true,
    pose: { heave: q[0]!, pitch: q[1]!, roll: q[2]! },
    pressure,
    penetration,
    iterations: descent.steps,
    smallestEigenvalue: descent.smallest,
    unbalancedXN: room.sums.force[0]!,
    unbalancedYN: room.sums.force[1]!,
    residual: descent.residual,
    compressionMax,
    centreX: f[9]! + byX / vertical,
    centreY: f[10]! + byY / vertical,
    normalOverLoad: normal / load.weightN,
  };
}
