import type { Equilibrium } from "../engine/contact/problem.ts";
import { cos, sin } from "../engine/number/index.ts";
import type { Seat } from "./fit.ts";
import type { Sitting, SittingProblem } from "./problem.ts";

/** How the saddle lies at an equilibrium, read off its pose. */
export function readOff(sitting: Sitting, problem: SittingProblem, found: Equilibrium): Seat {
  const { tree, back } = sitting;
  const { heave, pitch, roll } = found.pose;
  const { pivot, slide } = problem;
  const upAt = (x: number, z: number) => heave - (x - pivot.x) * sin(pitch) + z * cos(pitch) * cos(roll);
  const crownX = pivot.x + slide.x - pivot.x * cos(pitch) + tree.crownHeightMm * sin(pitch);
  return {
    ok: true,
    headUpRad: pitch,
    rollRad: roll,
    heaveMm: heave,
    crownOverBackMm: upAt(0, tree.crownHeightMm) - back.midlineMm(crownX),
    frontRiseMm: upAt(0, 0),
    rearRiseMm: upAt(tree.lengthMm, 0),
    centreXMm: found.centreX,
    smallestEigenvalue: found.smallestEigenvalue,
    unbalancedXN: found.unbalancedXN,
  };
}
