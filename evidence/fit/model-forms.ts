import type { SampleSurface } from "../../core/src/engine/surface.ts";
import type { Rest } from "../../core/src/fit/fit.ts";
import type { MassBelief } from "../../core/src/fit/load.ts";
import { MESHES, type Mesh } from "../../core/src/fit/panel-cells.ts";
import { type Rested, restOf } from "../../core/src/fit/rest.ts";
import { buildBack, isLacking } from "../../core/src/shape/back.ts";
import type { Back, Deviations, Half, Head, Tree, TreeBelief } from "../../core/src/shape/model.ts";
import { buildTree } from "../../core/src/shape/tree.ts";
import type { SurveyedHorse, SurveyedSaddle } from "../../core/src/survey/case.ts";
import { analyticBack, polynomial } from "../contact/back.ts";
import type { CaseInputs } from "../contact/model-case.ts";
import { midHeight, modelHorse, STATIONS_X } from "../shape/model-back.ts";
import { modelSaddle } from "../shape/model-saddle.ts";

const DEGREE = Math.PI / 180;
const G = 9.80665;

/** Arms of 95 mm at 45 degrees to the upright plane: the head of the trade's rule of thumb. */
export const ARMS_95: Head = {
  spreadMm: 205,
  spreadUpperMm: undefined,
  upperBelowCrownMm: undefined,
  depthMm: 95,
  crownRadiusMm: 35,
  thicknessMm: 10,
  halfAngleRad: { near: 45 * DEGREE, off: 45 * DEGREE },
};

/** Tree and panel of a reference case, as the shape room would hand them on. Its girth hangs 25 mm below the tips. */
export function treeOf({ panel, girth }: CaseInputs, head: Head = ARMS_95): Tree {
  const along = (coefficients: readonly number[]) => (x: number) => polynomial(coefficients, panel.L)(x)[0];
  const [front, rear] = panel.t;
  const thickness = (x: number) => {
    const t = front + ((rear - front) * x) / panel.L;
    return { inner: t, middle: t, outer: t };
  };
  const half: Half = {
    innerEdgeMm: () => panel.yin,
    widthMm: along(panel.w),
    faceAngleRad: along(panel.theta),
    heightMm: (x) => along(panel.zc)(x) + 0.5 * panel.kx * (x - panel.L / 2) ** 2,
    thicknessMm: {
      front: thickness(STATIONS_X.front),
      mid: thickness(STATIONS_X.mid),
      rear: thickness(STATIONS_X.rear),
    },
  };
  const strap = girth[0]?.P;
  const tipHeightMm = (strap?.[2] ?? -100) + 25;
  return {
    lengthMm: panel.L,
    stationsMm: STATIONS_X,
    halves: { near: half, off: half },
    head,
    crownHeightMm: tipHeightMm + head.depthMm,
    tipHeightMm,
    straps: { near: { xMm: strap?.[0] ?? 90 }, off: { xMm: strap?.[0] ?? 90 } },
    channelMm: { front: 75, mid: 75, rear: 75 },
    deepestSeatMm: 200,
  };
}

/** The reference case's saddle as it would be typed, its faces read at the three stations. */
export function typedSaddle({ panel }: CaseInputs): SurveyedSaddle {
  const face = (x: number) => {
    const at = (coefficients: readonly number[]) => polynomial(coefficients, panel.L)(x)[0];
    const t = panel.t[0] + ((panel.t[1] - panel.t[0]) * x) / panel.L;
    return {
      innerEdge: panel.yin,
      width: at(panel.w),
      faceAngle: at(panel.theta) / DEGREE,
      underStraightEdge: -at(panel.zc),
      inner: t,
      middle: t,
      outer: t,
    };
  };
  const faces = { front: face(STATIONS_X.front), mid: face(STATIONS_X.mid), rear: face(STATIONS_X.rear) };
  return modelSaddle(
    { halfAngleNear: 45, halfAngleOff: 45 },
    { strapNear: 90, strapOff: 90, panelEnd: panel.L },
    faces,
  );
}

export function backOf(horse: SurveyedHorse): Back {
  const back = buildBack(horse, "cold");
  if (isLacking(back)) throw new Error(back.lacking.join(" "));
  return back;
}
export function beliefOf(saddle: SurveyedSaddle): TreeBelief {
  const tree = buildTree(saddle);
  if (isLacking(tree)) throw new Error(tree.lacking.join(" "));
  return tree;
}

/** The reference back itself: its own surface and midline, behind the shape room's interface. */
export function exactBack(inputs: CaseInputs): Back {
  const surface: SampleSurface = analyticBack(inputs.back);
  return { ...backOf(modelHorse()), midlineMm: midHeight, surface: () => surface };
}

/** What weighs on it in a reference case, and the load's place where it differs from the base set. */
export function massOf({ load }: CaseInputs): MassBelief {
  return { at: () => load.W / G, uncertain: [] };
}
export const loadPlaceOf = ({ load, panel }: CaseInputs): Deviations => ({
  "load.at.part": load.xL / panel.L - 0.48,
  "load.height.mm": load.zL - 300,
});

export function rested(
  tree: Tree,
  back: Back,
  inputs: CaseInputs,
  mesh: Mesh = MESHES.fine,
  more: Deviations = {},
): Rested {
  const deviations = { ...loadPlaceOf(inputs), ...more };
  return restOf({ tree, back, surface: back.surface(deviations), mass: massOf(inputs), deviations }, mesh);
}

/** A rest with its pressures; a refusal is an error here. */
export function pressed(found: Rested): Rest {
  const rest = found.pressed();
  if (!rest.ok) throw new Error(`does not rest: ${rest.why}`);
  return rest;
}
