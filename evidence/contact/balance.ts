import type { ContactProblem, Equilibrium, Vector } from "@treewright/core/engine/contact/problem.ts";

/**
 * What is left of force and moment, from the pressures of an answer alone, by its own formulas; `across` along
 * y. Moments about the load point, with the force that holds x and y acting at the turned pivot; about the
 * pitch axis and about the roll axis, which pitches with the body.
 */
export function leftOver(
  problem: ContactProblem,
  rest: Equilibrium,
): { force: number; pitch: number; roll: number } {
  const { cells, pivot, slide, load, friction } = problem;
  const { heave, pitch, roll } = rest.pose;
  const turn = (v: Vector): Vector => turned(v, pitch, roll);
  const from = (v: Vector): Vector => ({ x: v.x - pivot.x, y: v.y - pivot.y, z: v.z - pivot.z });
  const T = { x: pivot.x + slide.x, y: pivot.y + slide.y, z: pivot.z + heave };
  const seat = load.turnsWithBody ? turn(from(load.at)) : from(load.at);
  let force = -load.weightN;
  const torque = { x: 0, y: 0, z: 0 };
  const add = (arm: Vector, f: Vector): void => {
    const a = { x: arm.x - seat.x, y: arm.y - seat.y, z: arm.z - seat.z };
    force += f.z;
    torque.x += a.y * f.z - a.z * f.y;
    torque.y += a.z * f.x - a.x * f.z;
    torque.z += a.x * f.y - a.y * f.x;
  };
  const arms = Array.from(cells.x, (x, i) => turn(from({ x, y: cells.y[i] ?? 0, z: cells.z[i] ?? 0 })));
  const slopes = slopesUnder(
    problem,
    arms.map((arm) => ({ x: arm.x + T.x, y: arm.y + T.y, z: 0 })),
  );
  arms.forEach((arm, i) => {
    const pa = (rest.pressure[i] ?? 0) * (cells.area[i] ?? 0);
    if (pa === 0) return;
    const { x: bx = 0, y: by = 0 } = slopes[i] ?? {};
    const long = Math.hypot(1, bx, by);
    const ease = Math.abs(by) < 0.02 ? (by / 0.02) * (1.5 - 0.5 * (by / 0.02) ** 2) : Math.sign(by);
    const up = (friction * ease) / Math.hypot(1, by);
    add(arm, { x: (-pa * bx) / long, y: pa * (up - by / long), z: pa * (1 / long + up * by) });
  });
  for (const pull of load.pulls) add(turn(from(pull.at)), pull.force);
  add({ x: 0, y: 0, z: 0 }, { x: -rest.unbalancedXN, y: -rest.unbalancedYN, z: 0 });
  return { force, pitch: torque.y, roll: torque.x * Math.cos(pitch) - torque.z * Math.sin(pitch) };
}

function turned({ x, y, z }: Vector, pitch: number, roll: number): Vector {
  const ry = y * Math.cos(roll) - z * Math.sin(roll);
  const rz = y * Math.sin(roll) + z * Math.cos(roll);
  return {
    x: x * Math.cos(pitch) + rz * Math.sin(pitch),
    y: ry,
    z: rz * Math.cos(pitch) - x * Math.sin(pitch),
  };
}

function slopesUnder({ surface }: ContactProblem, places: readonly Vector[]): { x: number; y: number }[] {
  const numbers = (): Float64Array => new Float64Array(places.length);
  const out = { z: numbers(), zx: numbers(), zy: numbers(), zxx: numbers(), zxy: numbers(), zyy: numbers() };
  surface(
    places.length,
    Float64Array.from(places, (p) => p.x),
    Float64Array.from(places, (p) => p.y),
    out,
  );
  return places.map((_, i) => ({ x: out.zx[i] ?? 0, y: out.zy[i] ?? 0 }));
}
