import { type Strip, type StripCells, stripCells } from "../engine/contact/strip-cells.ts";
import { eachStation, quadraticWeights, weighted } from "../shape/along.ts";
import { lastKept } from "../shape/last-kept.ts";
import type { Half, Tree } from "../shape/model.ts";
import { FACE_BOW_PER_MM } from "./assumed.ts";

/** How finely a panel is cut: rows along (a multiple of 3) and cells across, each side. */
export interface Mesh {
  readonly nx: number;
  readonly nv: number;
}

/** For one answer, for sweeps of settings, and for draws. The difference of the last two is added to the doubt. */
export const MESHES = {
  fine: { nx: 90, nv: 24 },
  sweep: { nx: 45, nv: 24 },
  draw: { nx: 12, nv: 8 },
} as const satisfies Record<string, Mesh>;

/** Cells of both panels together. */
export const cellsOf = ({ nx, nv }: Mesh): number => 2 * nx * nv;

/** Thinnest panel that is calculated with, mm; a thinner figure comes only from carrying a wedge on past its stations. */
const THINNEST_MM = 5;

/** The two panels of a tree, cut in cells. The tree has been turned already, so no turn is left to make. */
export function panelCells(tree: Tree, mesh: Mesh): StripCells {
  return stripCells({
    length: tree.lengthMm,
    ...mesh,
    low: stripOf(tree.halves.near, tree),
    high: stripOf(tree.halves.off, tree),
    faceCurvature: FACE_BOW_PER_MM,
    turn: () => 0,
    turnHeight: 0,
  });
}

function stripOf(half: Half, tree: Tree): Strip {
  return {
    innerEdge: half.innerEdgeMm,
    width: half.widthMm,
    faceAngle: half.faceAngleRad,
    height: half.heightMm,
    thickness: thicknessOf(half, tree),
  };
}

/** Thickness over the panel: quadratic through inner, middle and outer, and through the three stations. */
function thicknessOf(half: Half, tree: Tree): Strip["thickness"] {
  const rowAt = lastKept((x: number) => {
    const weights = quadraticWeights(tree.stationsMm, x);
    const at = (place: "inner" | "middle" | "outer") =>
      weighted(
        weights,
        eachStation((station) => half.thicknessMm[station][place]),
      );
    return { inner: at("inner"), middle: at("middle"), outer: at("outer") };
  });
  return (x, across) => {
    const { inner, middle, outer } = rowAt(x);
    const bend = (inner + outer) / 2 - middle;
    return Math.max(THINNEST_MM, middle + ((outer - inner) / 2) * across + bend * across * across);
  };
}
