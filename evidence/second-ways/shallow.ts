import type { ContactProblem } from "@treewright/core/engine/contact/problem.ts";
import { floor } from "../contact/foundation.ts";
import { inputsOf, problemOf } from "../contact/model-case.ts";

/** Gaps are this small a part of the reference's, and springs stiffer by as much: the same forces, and turns so small that the problem is linear to 1e-9. */
export const SHALLOW = 1e-3;

/**
 * The cells of the reference horse case laid out flat: each stands as high over a level floor as its cell stands over
 * the back, a thousandth of it. Without friction and with the load's line fixed this is a convex minimisation.
 */
export function shallowProblem(nx: number, nv: number): ContactProblem {
  const { cells, surface, load } = problemOf({ ...inputsOf("ct-horse-S+20"), mesh: { nx, nv } });
  const numbers = (): Float64Array => new Float64Array(cells.n);
  const back = { z: numbers(), zx: numbers(), zy: numbers(), zxx: numbers(), zxy: numbers(), zyy: numbers() };
  surface(cells.n, cells.x, cells.y, back);
  const z = numbers().map((_, i) => SHALLOW * ((cells.z[i] ?? 0) - (back.z[i] ?? 0)));
  return {
    cells: { ...cells, z },
    law: { kind: "linear", stiffness: numbers().fill(1e-3 / SHALLOW) },
    surface: floor,
    // So light that a third of the cells stay clear, and to one side, so that it rolls.
    load: { weightN: 250, at: { x: load.at.x, y: 12, z: 0 }, turnsWithBody: false, pulls: [] },
    friction: 0,
    across: { x: 0, y: 1 },
    pivot: { x: 215, y: 0, z: 0 },
    slide: { x: 0, y: 0 },
    compressionLimit: 0.7,
  };
}
