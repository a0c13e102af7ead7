import { type Fineness, layerMesh, type Place } from "./layer-mesh.ts";
import { ACROSS, ALONG } from "./on-nodes.ts";
import { layerStiffness, panelPoint, type SoftLayer, SURFACE_TIMES } from "./soft-layer.ts";

/** Pose of the panel: heave mm, pitch rad (positive: head up). */
export interface PanelPose {
  readonly heaveMm: number;
  readonly pitchRad: number;
}

/**
 * The panel starts this far from its final place and comes in without a turn, square to a side that falls by 35 degrees:
 * contact is looked for once an increment, and what slid meanwhile would be missed.
 */
const LIFT_MM = 14;
const FROM_OUTSIDE = 0.6;
const FROM_ABOVE = 0.8;
const PANEL_THICK_MM = 10;

/** A deck for CalculiX, and what is needed to read its answer: the panel's face nodes and their final places. */
export interface Deck {
  readonly text: string;
  readonly elements: number;
  readonly firstFaceNode: number;
  readonly facePlaces: readonly Place[];
}

/** Layer of bricks held at its base, panel of bricks whose every node is moved; contact surface to surface, no friction. */
export function deckOf(given: SoftLayer, pose: PanelPose, fineness: Fineness): Deck {
  const layer = layerMesh(given, fineness);
  const face: Place[] = [];
  for (let i = 0; i <= ALONG; i++) {
    for (let j = 0; j <= ACROSS; j++)
      face.push(
        moved(given, pose, panelPoint(given, (given.panel.lengthMm * i) / ALONG, (2 * j) / ACROSS - 1)),
      );
  }
  const first = layer.nodes.length + 1;
  const started = face.map(([x, y, z]): Place => [x, y + FROM_OUTSIDE * LIFT_MM, z + FROM_ABOVE * LIFT_MM]);
  const above = started.map(([x, y, z]): Place => [x, y, z + PANEL_THICK_MM]);
  const bricks = panelBricks(first, face.length);
  const { poisson, modulusMPa } = given.layer;
  const lastElement = layer.bricks.length;
  const lines = [
    "*NODE",
    ...[...layer.nodes, ...started, ...above].map(
      (at, n) => `${n + 1}, ${at.map((v) => v.toFixed(6)).join(", ")}`,
    ),
    "*ELEMENT, TYPE=C3D8, ELSET=LAYER",
    ...layer.bricks.map((brick, e) => `${e + 1}, ${brick.join(", ")}`),
    "*ELEMENT, TYPE=C3D8, ELSET=PANEL",
    ...bricks.map((brick, e) => `${lastElement + e + 1}, ${brick.join(", ")}`),
    "*NSET, NSET=BASE",
    ...layer.base.map(String),
    "*NSET, NSET=FACE, GENERATE",
    `${first}, ${first + face.length - 1}`,
    "*NSET, NSET=PANELNODES, GENERATE",
    `${first}, ${first + 2 * face.length - 1}`,
    "*SURFACE, NAME=TOP, TYPE=ELEMENT",
    ...layer.top.map((e) => `${e}, S2`),
    "*SURFACE, NAME=UNDER, TYPE=ELEMENT",
    ...bricks.map((_, e) => `${lastElement + e + 1}, S1`),
    "*MATERIAL, NAME=SOFT",
    "*ELASTIC",
    `${modulusMPa}, ${poisson}`,
    "*MATERIAL, NAME=MOVED",
    "*ELASTIC",
    "1e-6, 0.",
    "*SOLID SECTION, ELSET=LAYER, MATERIAL=SOFT",
    "*SOLID SECTION, ELSET=PANEL, MATERIAL=MOVED",
    "*SURFACE INTERACTION, NAME=TOUCH",
    "*SURFACE BEHAVIOR, PRESSURE-OVERCLOSURE=LINEAR",
    (layerStiffness(given) * SURFACE_TIMES).toFixed(9),
    "*CONTACT PAIR, INTERACTION=TOUCH, TYPE=SURFACE TO SURFACE",
    "TOP, UNDER",
    "*STEP, INC=200",
    "*STATIC",
    "0.25, 1., 1e-5, 0.25",
    "*BOUNDARY",
    "BASE, 1, 3",
    "PANELNODES, 1, 1",
    `PANELNODES, 2, 2, ${-FROM_OUTSIDE * LIFT_MM}`,
    `PANELNODES, 3, 3, ${-FROM_ABOVE * LIFT_MM}`,
    "*NODE PRINT, NSET=FACE",
    "RF",
    "*END STEP",
    "",
  ];
  return {
    text: lines.join("\n"),
    elements: lastElement + bricks.length,
    firstFaceNode: first,
    facePlaces: face,
  };
}

/** X = Ry(pitch) (P - C) + C + heave, C under the middle of the panel, as the program turns a body without roll. */
function moved({ panel }: SoftLayer, { heaveMm, pitchRad }: PanelPose, [x, y, z]: Place): Place {
  const [c, s, px] = [Math.cos(pitchRad), Math.sin(pitchRad), x - panel.lengthMm / 2];
  return [px * c + z * s + panel.lengthMm / 2, y, -px * s + z * c + heaveMm];
}

function panelBricks(first: number, faceNodes: number): number[][] {
  const bricks: number[][] = [];
  for (let i = 0; i < ALONG; i++) {
    for (let j = 0; j < ACROSS; j++) {
      const at = first + i * (ACROSS + 1) + j;
      const low = [at, at + ACROSS + 1, at + ACROSS + 2, at + 1];
      bricks.push([...low, ...low.map((node) => node + faceNodes)]);
    }
  }
  return bricks;
}
