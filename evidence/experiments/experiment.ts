import type { Rest } from "../../core/src/fit/fit.ts";
import { assumed } from "../../core/src/fit/load.ts";
import { MESHES } from "../../core/src/fit/panel-cells.ts";
import { restOf } from "../../core/src/fit/rest.ts";
import { treeAt } from "../../core/src/reach/turn.ts";
import type { Tree } from "../../core/src/shape/model.ts";
import { backOf } from "../fit/model-forms.ts";
import { BACKS, type BackShape } from "./backs.ts";
import { STEPS_MM, type Step, type Third } from "./claims.ts";
import { fittedTree, horseOf } from "./saddle.ts";

const DEG_PER_RAD = 180 / Math.PI;
export const THIRDS: readonly Third[] = ["front", "middle", "rear"];

/** One width on one back: turn of the head and the mean of each third, or why it finds no rest. */
export type Found =
  | { readonly headUpDeg: number; readonly meanKPa: { readonly [T in Third]: number } }
  | { readonly refused: string };
export type Step0 = Step | "fitted";
export type OnBack = { readonly [S in Step0]: Found };

const SETTINGS: readonly (readonly [Step0, number])[] = [
  ["fitted", 0],
  ["narrow", STEPS_MM.narrow],
  ["wide", STEPS_MM.wide],
  ["veryWide", STEPS_MM.veryWide],
];

/** All four widths on one back at rest. */
export function onBack(shape: BackShape): OnBack {
  const back = backOf(horseOf(shape));
  const fitted = fittedTree(shape);
  const turn = {
    hingePart: assumed("hingePart", {}),
    rearPart: assumed("rearPart", {}),
    fade: assumed("fade", {}),
  };
  const surface = back.surface({});
  const at = (tree: Tree): Found => {
    const mass = { at: () => assumed("riderMassKg", {}), uncertain: [] };
    const rest = restOf({ tree, back, surface, mass, deviations: {} }, MESHES.fine).pressed();
    if (!rest.ok) return { refused: rest.why };
    return { headUpDeg: rest.headUpRad * DEG_PER_RAD, meanKPa: meansOf(rest) };
  };
  const found = SETTINGS.map(([step, changeMm]): [Step0, Found] => [
    step,
    at(treeAt(fitted, { changeMm, halfTurnRad: undefined }, turn)),
  ]);
  return Object.fromEntries(found) as OnBack;
}

/** Mean of both panels over each third, touching or not, kPa. */
function meansOf({ thirds }: Rest): { [T in Third]: number } {
  const mean = (third: Third) => {
    const both = thirds.filter((one) => one.third === third);
    return both.reduce((sum, one) => sum + one.meanKPa, 0) / both.length;
  };
  return { front: mean("front"), middle: mean("middle"), rear: mean("rear") };
}

export const allBacks = (): { readonly [id: string]: OnBack } =>
  Object.fromEntries(BACKS.map((shape) => [shape.id, onBack(shape)]));
