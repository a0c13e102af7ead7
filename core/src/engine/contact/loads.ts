import type { ContactProblem, Vector } from "./problem.ts";
import type { Room, Sums } from "./room.ts";
import { sumContact } from "./sums.ts";

/** Residual and tangent of contact and loads at the pose in `room.frame`, into `room.sums`. */
export function assemble(problem: ContactProblem, room: Room, step: number): void {
  const { load, pivot } = problem;
  const { frame: f, sums } = room;
  sumContact(problem, room, step);
  sums.contact[0] = sums.force[2]!;
  sums.contact[1] = sums.moment[6]!;
  sums.contact[2] = sums.moment[7]!;
  for (const pull of load.pulls)
    addTurning(f, pivot, pull.at, pull.force.x, pull.force.y, pull.force.z, sums);
  if (load.turnsWithBody) addTurning(f, pivot, load.at, 0, 0, -load.weightN, sums);
  closeArms(f, sums);
  if (!load.turnsWithBody) addFixed(f, load.at.x - pivot.x, load.at.y - pivot.y, load.weightN, sums);
}

/** Adds a dead force on a point of the body. */
function addTurning(
  f: Float64Array,
  pivot: Vector,
  at: Vector,
  fx: number,
  fy: number,
  fz: number,
  sums: Sums,
): void {
  const { force, moment } = sums;
  const px = at.x - pivot.x;
  const py = at.y - pivot.y;
  const pz = at.z - pivot.z;
  const given = [fx, fy, fz];
  for (let j = 0; j < 3; j++) {
    const arm = f[3 * j]! * px + f[3 * j + 1]! * py + f[3 * j + 2]! * pz;
    for (let i = 0; i < 3; i++) moment[3 * i + j] = moment[3 * i + j]! + given[i]! * arm;
  }
  for (let i = 0; i < 3; i++) force[i] = force[i]! + given[i]!;
}

/**
 * From sum of F r: residual g[i] = F . (a_i x r), and the part of the tangent that comes from turning arms,
 * -F . (a_i x (a_j x r)) = -(F . a_j)(a_i . r) + (F . r)(a_i . a_j); a1 and a2 stand square to each other.
 */
function closeArms(f: Float64Array, { g, k, force, moment: m }: Sums): void {
  const px = f[12]!;
  const py = f[13]!;
  const rx = f[14]!;
  const ry = f[15]!;
  const rz = f[16]!;
  // Torque about T, r x F.
  const torqueX = m[7]! - m[5]!;
  const torqueY = m[2]! - m[6]!;
  const torqueZ = m[3]! - m[1]!;
  g[0] = force[2]!;
  g[1] = px * torqueX + py * torqueY;
  g[2] = rx * torqueX + ry * torqueY + rz * torqueZ;
  // (M a1) by force component: sum of F (a1 . r); likewise for a2.
  const ux = m[0]! * px + m[1]! * py;
  const uy = m[3]! * px + m[4]! * py;
  const uz = m[6]! * px + m[7]! * py;
  const wx = m[0]! * rx + m[1]! * ry + m[2]! * rz;
  const wy = m[3]! * rx + m[4]! * ry + m[5]! * rz;
  const wz = m[6]! * rx + m[7]! * ry + m[8]! * rz;
  const dot = m[0]! + m[4]! + m[8]!;
  const mixed = rx * ux + ry * uy + rz * uz;
  k[4] = k[4]! - (px * ux + py * uy) + dot;
  k[5] = k[5]! - mixed;
  k[7] = k[7]! - mixed;
  k[8] = k[8]! - (rx * wx + ry * wy + rz * wz) + dot;
}

/** Adds the weight on a line that stays fixed in space: its arm does not turn, the roll axis still does. */
function addFixed(f: Float64Array, armX: number, armY: number, weightN: number, { g, k, force }: Sums): void {
  force[2] = force[2]! - weightN;
  g[0] = g[0]! - weightN;
  g[1] = g[1]! - weightN * (f[12]! * armY - f[13]! * armX);
  g[2] = g[2]! - weightN * (f[14]! * armY - f[15]! * armX);
  k[7] = k[7]! - weightN * (f[17]! * armY - f[18]! * armX);
}
