import type { ContactProblem, Pose } from "@treewright/core/engine/contact/problem.ts";
import highsLoader from "highs";
import { SHALLOW } from "./shallow.ts";

export interface FoundByQp {
  readonly pose: Pose;
  readonly pressure: readonly number[];
  readonly ms: number;
}

/**
 * The same rest found by a general solver of convex quadratic programmes (HiGHS): heave, pitch, roll free; each cell
 * shorter by s >= 0 and by at least what the pose asks of it; the least of 1/2 sum k A s2 - W q.
 * Lengths in thousandths, so that the solver meets numbers of ordinary size.
 */
export async function byQuadraticProgramme(problem: ContactProblem): Promise<FoundByQp> {
  const highs = await highsLoader();
  const text = programme(problem);
  const start = performance.now();
  const found = highs.solve(text, OPTIONS);
  const ms = performance.now() - start;
  if (found.Status !== "Optimal") throw new Error(`the quadratic programme ended as ${found.Status}`);
  const value = (name: string): number => found.Columns[name]?.Primal ?? Number.NaN;
  const { cells, law } = problem;
  const stiffness = law.kind === "linear" ? law.stiffness : new Float64Array(cells.n);
  return {
    pose: {
      heave: SHALLOW * value("heave"),
      pitch: (SHALLOW * value("pitch")) / ARM_MM,
      roll: (SHALLOW * value("roll")) / ARM_MM,
    },
    pressure: Array.from({ length: cells.n }, (_, i) => (stiffness[i] ?? 0) * SHALLOW * value(`s${i}`)),
    ms,
  };
}

/** The solver adds a small multiple of the identity to what is squared; left at its default it moves the answer by 5e-7. */
const OPTIONS = {
  output_flag: false,
  primal_feasibility_tolerance: 1e-9,
  dual_feasibility_tolerance: 1e-9,
  qp_regularization_value: 1e-11,
};

/** Turns are counted as what they move at this arm, mm. */
const ARM_MM = 100;

/** In the solver's text form. Pitch lowers what lies toward the tail (x), roll lifts what lies to the right (y). */
function programme({ cells, law, load, pivot }: ContactProblem): string {
  const k = law.kind === "linear" ? law.stiffness : new Float64Array(cells.n);
  const arms = (x: number, y: number): [number, number] => [(x - pivot.x) / ARM_MM, (y - pivot.y) / ARM_MM];
  const [lx, ly] = arms(load.at.x, load.at.y);
  const w = load.weightN;
  const squares: string[] = [];
  const rows: string[] = [];
  for (let i = 0; i < cells.n; i++) {
    const [ax, ay] = arms(cells.x[i] ?? 0, cells.y[i] ?? 0);
    squares.push(`${term((k[i] ?? 0) * SHALLOW * (cells.area[i] ?? 0))} s${i} ^2`);
    // s >= -(z + heave - x pitch + y roll)
    rows.push(`c${i}: s${i} + heave ${term(-ax)} pitch ${term(ay)} roll >= ${-(cells.z[i] ?? 0) / SHALLOW}`);
  }
  return [
    "Minimize",
    `energy: ${w} heave ${term(-w * lx)} pitch ${term(w * ly)} roll + [ ${squares.join(" ")} ] / 2`,
    "Subject To",
    ...rows,
    "Bounds",
    "heave free",
    "pitch free",
    "roll free",
    "End",
  ].join("\n");
}

const term = (value: number): string => `${value < 0 ? "-" : "+"} ${Math.abs(value)}`;
