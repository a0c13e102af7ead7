import type { ContactProblem, Equilibrium, Law, Pose } from "../engine/contact/problem.ts";
import { type SettleOptions, settle } from "../engine/contact/settle.ts";
import type { StripCells } from "../engine/contact/strip-cells.ts";
import { cos, sin } from "../engine/number/index.ts";
import type { SampleSurface } from "../engine/surface.ts";
import type { Back, Deviations, Tree } from "../shape/model.ts";
import { COMPRESSION_LIMIT, TISSUE_MM } from "./assumed.ts";
import type { NoRest, Rest, Seat } from "./fit.ts";
import { assumed, loadAtRest, type MassBelief } from "./load.ts";
import { type Mesh, panelCells } from "./panel-cells.ts";
import { fieldOf, thirdsOf } from "./thirds.ts";
import { unloadedOf } from "./unloaded.ts";

/** A saddle to be put on a back: the tree as a setting makes it, the back's surface, what weighs on it, and one draw of all doubts. */
export interface Sitting {
  readonly tree: Tree;
  readonly back: Back;
  readonly surface: SampleSurface;
  readonly mass: MassBelief;
  readonly deviations: Deviations;
}

/** Where a saddle comes to rest, and the pose to start a neighbouring setting from. */
export interface Rested {
  readonly rest: Seat | NoRest;
  readonly pose: Pose | undefined;
  /** The pressures, worked out when they are asked for: no draw needs them. */
  pressed(): Rest | NoRest;
}

/**
 * One tree on one back under weight and girth, at rest. Fore and aft is held (a free slide wanders or tips) and what is
 * left over along x is told. Refused where the saddle tips, is not stable, or is pressed beyond the law.
 */
export function restOf(sitting: Sitting, mesh: Mesh, options: SettleOptions = {}): Rested {
  const problem = problemOf(sitting, mesh);
  const found = settle(problem, options);
  if (!found.ok) return { rest: found, pose: undefined, pressed: () => found };
  const seat = readOff(sitting, problem, found);
  const { cells } = problem;
  const unloaded = () => unloadedOf(sitting.tree, sitting.surface, problem.slide.x);
  const pressed = (): Rest => ({
    ...seat,
    ...unloaded(),
    thirds: thirdsOf(cells, found.pressure),
    field: fieldOf(cells, found.pressure, mesh),
  });
  return { rest: seat, pose: found.pose, pressed };
}

function problemOf(
  { tree, surface, mass, deviations }: Sitting,
  mesh: Mesh,
): ContactProblem & { cells: StripCells } {
  const cells = panelCells(tree, mesh);
  return {
    cells,
    law: lawOf(cells, deviations),
    surface,
    load: loadAtRest(tree, mass, deviations),
    friction: assumed("friction", deviations),
    across: { x: 0, y: 1 },
    pivot: { x: tree.lengthMm / 2, y: 0, z: 0 },
    slide: { x: assumed("placementMm", deviations), y: 0 },
    compressionLimit: COMPRESSION_LIMIT,
  };
}

/** Panel over tissue, in series on each cell; both linear within the range used. */
function lawOf(cells: StripCells, deviations: Deviations): Law {
  const even = (value: number) => new Float64Array(cells.n).fill(value);
  return {
    kind: "series",
    upperModulus: even(assumed("panelModulusMPa", deviations)),
    upperThickness: cells.thickness,
    upperLimit: Number.POSITIVE_INFINITY,
    lowerModulus: even(assumed("tissueModulusMPa", deviations)),
    lowerThickness: even(TISSUE_MM),
  };
}

function readOff(sitting: Sitting, problem: ContactProblem, found: Equilibrium): Seat {
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
