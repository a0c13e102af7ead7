import type { ContactProblem, Equilibrium } from "@treewright/core/engine/contact/problem.ts";
import { settle } from "@treewright/core/engine/contact/settle.ts";
import type { Actual } from "../published/published.ts";
import { type CaseInputs, inputsOf, problemOf } from "./model-case.ts";
import { summaryOf } from "./summary.ts";

function solve(inputs: CaseInputs): { problem: ContactProblem; rest: Equilibrium } {
  const problem = problemOf(inputs);
  const rest = settle(problem);
  if (!rest.ok) throw new Error(`refused: ${rest.why}`);
  return { problem, rest };
}

/** Pressure, kPa, of one row of cells, and its rise to the next row, at the front and the rear end. */
function ends({ pressure }: Equilibrium, { mesh }: CaseInputs) {
  const row = (i: number): number => 1000 * (pressure[i * mesh.nv] ?? Number.NaN);
  const last = mesh.nx - 1;
  const front = { p: row(0), rise: row(1) - row(0) };
  const rear = { p: row(last), rise: row(last) - row(last - 1) };
  return { frontEdge: front.p - front.rise / 2, rearEdge: rear.p + rear.rise / 2, rearRise: rear.rise };
}

function even(id: string): () => Actual {
  return () => {
    const { problem, rest } = solve(inputsOf(id));
    const { maxKPa, heaveMm } = summaryOf(problem, rest);
    return { pKPa: maxKPa, heaveMm };
  };
}

function roof(id: string): () => Actual {
  return () => {
    const { problem, rest } = solve(inputsOf(id));
    const { maxKPa, heaveMm, normalOverLoad } = summaryOf(problem, rest);
    return { pKPa: maxKPa, heaveMm, normalOverLoad };
  };
}

function kern(): Actual {
  const inputs = inputsOf("ct-flat-eccentric-kern");
  const { problem, rest } = solve(inputs);
  const { frontEdge, rearEdge } = ends(rest, inputs);
  return { pFrontKPa: frontEdge, pRearKPa: rearEdge, headUpDeg: summaryOf(problem, rest).headUpDeg };
}

function lift(): Actual {
  const inputs = inputsOf("ct-flat-eccentric-lift");
  const { problem, rest } = solve(inputs);
  const { rearEdge, rearRise } = ends(rest, inputs);
  const row = inputs.panel.L / inputs.mesh.nx;
  return {
    contactLengthMm: (rearEdge / rearRise) * row,
    pRearEdgeKPa: rearEdge,
    headUpDeg: summaryOf(problem, rest).headUpDeg,
  };
}

/**
 * Load point high over the seat. The turn grows as 1 / (1 - height / critical height), which gives the height
 * at which pitch no longer holds (roll lets go before it, so that height itself is never at rest).
 */
function topHeavy(): Actual {
  const inputs = inputsOf("ct-flat-topheavy-stable");
  const { load } = inputs;
  const pitchAt = (zL: number): number => solve({ ...inputs, load: { ...load, zL } }).rest.pose.pitch;
  const low = pitchAt(0);
  const high = pitchAt(load.zL);
  const higher = 1.15 * load.zL;
  return {
    pitchStiffnessNmmPerRad: (load.W * (load.xL - load.xC)) / low,
    amplification: high / low,
    headUpDeg: (high * 180) / Math.PI,
    criticalZLMm: higher / (1 - low / pitchAt(higher)),
  };
}

/** Line contact: the half width from the parabola through two pressures of one row. */
function bulge(): Actual {
  const given = inputsOf("ct-parabolic-strip");
  const inputs = { ...given, mesh: { nx: given.mesh.nx, nv: 4 * given.mesh.nv } };
  const { problem, rest } = solve(inputs);
  const { maxKPa, areaCm2, heaveMm } = summaryOf(problem, rest);
  const { nv } = inputs.mesh;
  const cell = (inputs.panel.w[0] ?? 0) / nv;
  const [near, far] = [nv / 2, nv / 2 + nv / 8].map((j) => ({
    square: ((j + 0.5 - nv / 2) * cell) ** 2,
    p: rest.pressure[j] ?? Number.NaN,
  }));
  if (!near || !far) throw new Error("no row");
  const fall = (near.p - far.p) / (far.square - near.square);
  const halfWidthMm = Math.sqrt((near.p + fall * near.square) / fall);
  return { halfWidthMm, heaveMm, pMaxKPa: maxKPa, areaCm2 };
}

/** What each model case with a closed form says in its words. */
export const closedForms: { readonly [id: string]: () => Actual } = {
  "ct-flat-centre": even("ct-flat-centre"),
  "ct-flat-stiffening": even("ct-flat-stiffening"),
  "ct-flat-eccentric-kern": kern,
  "ct-flat-eccentric-lift": lift,
  "ct-flat-topheavy-stable": topHeavy,
  "ct-parabolic-strip": bulge,
  "ct-roof": roof("ct-roof"),
  "ct-roof-friction": roof("ct-roof-friction"),
};
