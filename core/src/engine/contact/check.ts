import type { Cells, ContactProblem, Law, Pose, Vector } from "./problem.ts";

/** Throws a RangeError that names the field when a number of the problem is not one, or is of the wrong sign. */
export function checkProblem(problem: ContactProblem, start: Pose | undefined): void {
  const { cells, law, load, across } = problem;
  checkCells(cells);
  checkLaw(law, cells.n);
  above("load.weightN", load.weightN, 0);
  checkVector("load.at", load.at);
  load.pulls.forEach((pull, i) => {
    checkVector(`load.pulls[${i}].at`, pull.at);
    checkVector(`load.pulls[${i}].force`, pull.force);
  });
  atLeast("friction", problem.friction, 0);
  checkVector("pivot", problem.pivot);
  finite("slide.x", problem.slide.x);
  finite("slide.y", problem.slide.y);
  if (!(Math.abs(across.x * across.x + across.y * across.y - 1) < 1e-9)) {
    throw new RangeError("across: not a unit direction");
  }
  above("compressionLimit", problem.compressionLimit, 0);
  if (start) for (const name of ["heave", "pitch", "roll"] as const) finite(`start.${name}`, start[name]);
}

/** Weight and pulls without their directions: what residuals are measured by, N. */
export function loadOf({ load }: ContactProblem): number {
  const size = ({ x, y, z }: Vector): number => Math.sqrt(x * x + y * y + z * z);
  return load.pulls.reduce((sum, pull) => sum + size(pull.force), load.weightN);
}

function checkCells(cells: Cells): void {
  if (!(Number.isInteger(cells.n) && cells.n > 0))
    throw new RangeError(`cells.n: ${cells.n}, not a count above 0`);
  every("cells.x", cells.x, cells.n, -Infinity);
  every("cells.y", cells.y, cells.n, -Infinity);
  every("cells.z", cells.z, cells.n, -Infinity);
  every("cells.area", cells.area, cells.n, 0);
}

function checkLaw(law: Law, n: number): void {
  if (law.kind === "linear") {
    every("law.stiffness", law.stiffness, n, 0);
    return;
  }
  every("law.upperModulus", law.upperModulus, n, 0);
  every("law.upperThickness", law.upperThickness, n, 0);
  every("law.lowerModulus", law.lowerModulus, n, 0);
  every("law.lowerThickness", law.lowerThickness, n, 0);
  if (law.upperLimit !== Infinity) above("law.upperLimit", law.upperLimit, 0);
}

function every(name: string, values: Float64Array, n: number, least: number): void {
  if (values.length < n) throw new RangeError(`${name}: ${values.length} values for ${n} cells`);
  for (let i = 0; i < n; i++) {
    const value = values[i]!;
    if (!(value > least && value < Infinity)) throw new RangeError(`${name}[${i}]: ${value} is not allowed`);
  }
}

function checkVector(name: string, { x, y, z }: Vector): void {
  finite(`${name}.x`, x);
  finite(`${name}.y`, y);
  finite(`${name}.z`, z);
}

function finite(name: string, value: number): void {
  if (!Number.isFinite(value)) throw new RangeError(`${name}: ${value} is not a number one can use`);
}

function atLeast(name: string, value: number, least: number): void {
  finite(name, value);
  if (value < least) throw new RangeError(`${name}: ${value} is below ${least}`);
}

function above(name: string, value: number, least: number): void {
  finite(name, value);
  if (value <= least) throw new RangeError(`${name}: ${value} is not above ${least}`);
}
