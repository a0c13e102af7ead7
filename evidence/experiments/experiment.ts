import { readFileSync } from "node:fs";
import { formsOf } from "../../core/src/answer/forms.ts";
import { type FormsInDraw, inDraw, wholeAt } from "../../core/src/answer/whole.ts";
import type { ThirdFit } from "../../core/src/fit/fit.ts";
import { MESHES } from "../../core/src/fit/panel-cells.ts";
import { opened } from "../../core/src/reach/move.ts";
import type { Survey } from "../../core/src/survey/case.ts";
import { readCase } from "../../core/src/survey/read-case.ts";
import type { Third } from "../../core/src/terms/places.ts";
import { BACKS, type BackShape } from "./backs.ts";
import { STEPS_MM, type Step } from "./claims.ts";
import { fittedSaddle, horseOf } from "./saddle.ts";

const DEG_PER_RAD = 180 / Math.PI;
export const LOADS = ["rest", "walk", "trot"] as const;
export type LoadName = (typeof LOADS)[number];

/** Mean of each third, kPa, and at rest the turn of the head; or why it finds no rest. */
export type Found =
  | { readonly meanKPa: { readonly [T in Third]: number }; readonly headUpDeg?: number }
  | { readonly refused: string };
export type Width = "fitted" | Step;
export const WIDTHS: readonly Width[] = ["fitted", "narrow", "wide", "veryWide"];
export type OnBack = { readonly [L in LoadName]: { readonly [W in Width]: Found } };

/** All four widths on one back, at rest and at the peaks of walk and trot: the program's own whole road at its means. */
export function onBack(shape: BackShape): OnBack {
  const drawn = inDraw(formsOf(caseOf(shape), 0), {});
  const all = {
    fitted: underLoads(drawn, 0),
    narrow: underLoads(drawn, STEPS_MM.narrow),
    wide: underLoads(drawn, STEPS_MM.wide),
    veryWide: underLoads(drawn, STEPS_MM.veryWide),
  };
  const under = (load: LoadName) => ({
    fitted: all.fitted[load],
    narrow: all.narrow[load],
    wide: all.wide[load],
    veryWide: all.veryWide[load],
  });
  return { rest: under("rest"), walk: under("walk"), trot: under("trot") };
}

function underLoads(drawn: FormsInDraw, changeMm: number): { readonly [L in LoadName]: Found } {
  const whole = wholeAt(drawn, opened(changeMm), { mesh: MESHES.fine });
  const rest = whole?.pressed();
  if (whole === undefined || rest === undefined) throw new Error("a reading is missing for the whole fit");
  const inGait = (wanted: string): Found => {
    const found = whole.ridden().gaits.find(({ gait }) => gait === wanted);
    if (!found) return { refused: rest.ok ? "not ridden" : rest.why };
    return found.ok ? { meanKPa: meansOf(found.thirds) } : { refused: found.why };
  };
  return {
    rest: rest.ok
      ? { meanKPa: meansOf(rest.thirds), headUpDeg: rest.headUpRad * DEG_PER_RAD }
      : { refused: rest.why },
    walk: inGait("walk"),
    trot: inGait("trot"),
  };
}

/** The smallest case with this back and its saddle in it: rider, straps, bars, tissue and seat are as nobody read them. */
function caseOf(shape: BackShape): Survey {
  const file = new URL("../../core/src/survey/fixtures/minimal.json", import.meta.url);
  const read = readCase(readFileSync(file, "utf8"));
  if (!read.ok) throw new Error("the smallest case cannot be read");
  return { ...read.survey, saddle: fittedSaddle(shape), horses: [horseOf(shape)] };
}

/** Mean of both panels over each third, touching or not, kPa. */
function meansOf(thirds: readonly ThirdFit[]): { readonly [T in Third]: number } {
  const mean = (third: Third) => {
    const both = thirds.filter((one) => one.third === third);
    return both.reduce((sum, one) => sum + one.meanKPa, 0) / both.length;
  };
  return { front: mean("front"), middle: mean("middle"), rear: mean("rear") };
}

export const allBacks = (): { readonly [id: string]: OnBack } =>
  Object.fromEntries(BACKS.map((shape) => [shape.id, onBack(shape)]));
