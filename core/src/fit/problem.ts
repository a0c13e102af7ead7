import type { ContactProblem, Law } from "../engine/contact/problem.ts";
import type { StripCells } from "../engine/contact/strip-cells.ts";
import type { SampleSurface } from "../engine/surface.ts";
import type { Back, Deviations, Tree } from "../shape/model.ts";
import { COMPRESSION_LIMIT } from "./assumed.ts";
import { assumed, loadAtRest, type MassBelief } from "./load.ts";
import type { LoadsRead } from "./loads-read.ts";
import { type Mesh, panelCells } from "./panel-cells.ts";
import { ONE_TISSUE } from "./tissue.ts";

/** A saddle to be put on a back: the tree as a setting makes it, the back's surface, what weighs on it, and one draw of all doubts. */
export interface Sitting {
  readonly tree: Tree;
  readonly back: Back;
  readonly surface: SampleSurface;
  readonly mass: MassBelief;
  readonly deviations: Deviations;
  /** Straps, bars, tissue and gaits as read; without it one strap a side, one tissue all over, and rest alone. */
  readonly loads?: LoadsRead | undefined;
}

type SeriesLaw = Extract<Law, { kind: "series" }>;

/** The saddle as the engine takes it, with what it says of each cell besides. */
export interface SittingProblem extends ContactProblem {
  readonly cells: StripCells;
  readonly law: SeriesLaw;
  readonly mesh: Mesh;
  /** 1 for a cell over the ridge, where nothing may press. */
  readonly onRidge: Uint8Array;
}

export function problemOf(sitting: Sitting, mesh: Mesh): SittingProblem {
  const { tree, surface, deviations, loads } = sitting;
  const cells = panelCells(tree, mesh);
  const slide = { x: assumed("placementMm", deviations), y: 0 };
  const common = assumed("tissueModulusMPa", deviations);
  const tissue = (loads?.tissue ?? ONE_TISSUE).under(cells, tree, common, slide.x, deviations);
  return {
    cells,
    mesh,
    onRidge: tissue.onRidge,
    law: lawOf(cells, assumed("panelModulusMPa", deviations), tissue.modulusMPa, tissue.depthMm),
    surface,
    load: loadAtRest(sitting),
    friction: assumed("friction", deviations),
    across: { x: 0, y: 1 },
    pivot: { x: tree.lengthMm / 2, y: 0, z: 0 },
    slide,
    compressionLimit: COMPRESSION_LIMIT,
  };
}

/** Panel over tissue, in series on each cell; both linear within the range used. */
function lawOf(
  cells: StripCells,
  panelMPa: number,
  tissueMPa: Float64Array,
  depthMm: Float64Array,
): SeriesLaw {
  return {
    kind: "series",
    upperModulus: new Float64Array(cells.n).fill(panelMPa),
    upperThickness: cells.thickness,
    upperLimit: Number.POSITIVE_INFINITY,
    lowerModulus: tissueMPa,
    lowerThickness: depthMm,
  };
}
