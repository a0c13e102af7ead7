import type { ContactProblem } from "@treewright/core/engine/contact/problem.ts";
import { settle } from "@treewright/core/engine/contact/settle.ts";
import { stripCells } from "@treewright/core/engine/contact/strip-cells.ts";
import { analyticBack, polynomial } from "../contact/back.ts";
import { addTo, nodeCount, type OnNodes } from "./on-nodes.ts";
import { endRiseMm, layerStiffness, type SoftLayer, stiffnessInSeries } from "./soft-layer.ts";

/** The program's answer: pose, and normal forces on the nodes of the panel on y > 0. */
export interface OnSprings {
  readonly heaveMm: number;
  readonly pitchRad: number;
  readonly forces: OnNodes;
}

const MESH = { nx: 216, nv: 60 } as const;

export function springProblem(given: SoftLayer): ContactProblem {
  const { panel, back, weightN, loadAt } = given;
  const along = (coefficients: readonly number[]) => (x: number) =>
    polynomial(coefficients, panel.lengthMm)(x)[0];
  const strip = {
    innerEdge: () => panel.innerEdgeMm,
    width: along(panel.widthMm),
    faceAngle: along(panel.faceAngleRad),
    height: (x: number) => along(panel.heightMm)(x) + endRiseMm(given, x),
    thickness: () => given.layer.thicknessMm,
  };
  const cells = stripCells({
    length: panel.lengthMm,
    ...MESH,
    low: strip,
    high: strip,
    faceCurvature: panel.bowPerMm,
    turn: () => 0,
    turnHeight: 0,
  });
  return {
    cells,
    law: {
      kind: "linear",
      stiffness: new Float64Array(cells.n).fill(stiffnessInSeries(layerStiffness(given))),
    },
    surface: analyticBack(back),
    load: { weightN, at: { x: loadAt.x, y: 0, z: loadAt.z }, turnsWithBody: true, pulls: [] },
    friction: 0,
    across: { x: 0, y: 1 },
    pivot: { x: panel.lengthMm / 2, y: 0, z: 0 },
    slide: { x: 0, y: 0 },
    compressionLimit: 0.7,
  };
}

export function onSprings(given: SoftLayer): OnSprings {
  const problem = springProblem(given);
  const rest = settle(problem);
  if (!rest.ok) throw new Error(`${given.id}: ${rest.why}`);
  const { cells } = problem;
  const forces = new Float64Array(nodeCount);
  for (let k = 0; k < MESH.nx * MESH.nv; k++) {
    const at = MESH.nx * MESH.nv + k;
    const across = (2 * (k % MESH.nv) + 1) / MESH.nv - 1;
    const force = (rest.pressure[at] ?? 0) * (cells.area[at] ?? 0);
    addTo(forces, given, cells.x[at] ?? 0, across, force);
  }
  return { heaveMm: rest.pose.heave, pitchRad: rest.pose.pitch, forces };
}
