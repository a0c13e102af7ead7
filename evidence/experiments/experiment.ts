import { readFileSync } from "node:fs";
import type { ThirdFit } from "../../core/src/fit/fit.ts";
import { assumed } from "../../core/src/fit/load.ts";
import { type LoadsRead, loadsRead } from "../../core/src/fit/loads-read.ts";
import { MESHES } from "../../core/src/fit/panel-cells.ts";
import { restOf } from "../../core/src/fit/rest.ts";
import type { Back, Tree } from "../../core/src/shape/model.ts";
import type { SurveyedHorse, SurveyedSaddle } from "../../core/src/survey/case.ts";
import { readCase } from "../../core/src/survey/read-case.ts";
import { backOf, beliefOf } from "../fit/model-forms.ts";
import { opened } from "../frame/moved.ts";
import { BACKS, type BackShape } from "./backs.ts";
import { STEPS_MM, type Step, type Third } from "./claims.ts";
import { fittedSaddle, horseOf } from "./saddle.ts";

const DEG_PER_RAD = 180 / Math.PI;
export const THIRDS: readonly Third[] = ["front", "middle", "rear"];
/** At rest under the base set alone; at the peaks with straps, bars and four tissues as the program takes them unread. */
export const LOADS = ["rest", "walk", "trot"] as const;
export type LoadName = (typeof LOADS)[number];

/** Mean of each third, kPa, and at rest the turn of the head; or why it finds no rest. */
export type Found =
  | { readonly meanKPa: { readonly [T in Third]: number }; readonly headUpDeg?: number }
  | { readonly refused: string };
export type Width = "fitted" | Step;
export const WIDTHS: readonly Width[] = ["fitted", "narrow", "wide", "veryWide"];
export type OnBack = { readonly [L in LoadName]: { readonly [W in Width]: Found } };

/** All four widths on one back under all loads. */
export function onBack(shape: BackShape): OnBack {
  const horse = horseOf(shape);
  const saddle = fittedSaddle(shape);
  const back = backOf(horse);
  const fitted = beliefOf(saddle).at({});
  const loads = unread(saddle, horse);
  const at = (width: Width) => underLoads(back, widened(fitted, width), loads);
  const all = { fitted: at("fitted"), narrow: at("narrow"), wide: at("wide"), veryWide: at("veryWide") };
  const under = (load: LoadName) => ({
    fitted: all.fitted[load],
    narrow: all.narrow[load],
    wide: all.wide[load],
    veryWide: all.veryWide[load],
  });
  return { rest: under("rest"), walk: under("walk"), trot: under("trot") };
}

function widened(fitted: Tree, width: Width): Tree {
  return opened(fitted, width === "fitted" ? 0 : STEPS_MM[width]);
}

function underLoads(back: Back, tree: Tree, loads: LoadsRead): { readonly [L in LoadName]: Found } {
  const mass = { at: () => assumed("riderMassKg", {}), uncertain: [] };
  const sitting = { tree, back, surface: back.surface({}), mass, deviations: {} };
  const rest = restOf(sitting, MESHES.fine).pressed();
  const { gaits } = restOf({ ...sitting, loads }, MESHES.fine).ridden();
  const inGait = (wanted: string): Found => {
    const found = gaits.find(({ gait }) => gait === wanted);
    if (!found) return { refused: "no rest to begin with" };
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

/** Loads as the program takes them where nobody read straps, bars, tissue or seat. */
function unread(saddle: SurveyedSaddle, horse: SurveyedHorse): LoadsRead {
  const file = new URL("../../core/src/survey/fixtures/minimal.json", import.meta.url);
  const read = readCase(readFileSync(file, "utf8"));
  if (!read.ok) throw new Error("the smallest case cannot be read");
  return loadsRead({ ...read.survey, saddle }, horse);
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
