import type { Rest } from "../../core/src/fit/fit.ts";
import { type LoadsRead, loadsRead } from "../../core/src/fit/loads-read.ts";
import type { Mounting } from "../../core/src/fit/mounting.ts";
import { MESHES, type Mesh } from "../../core/src/fit/panel-cells.ts";
import { problemOf, type Sitting, type SittingProblem } from "../../core/src/fit/problem.ts";
import { type Rested, restOf } from "../../core/src/fit/rest.ts";
import type { Deviations } from "../../core/src/shape/model.ts";
import { CASE_VERSION, caseSchema } from "../../core/src/survey/case.ts";
import { inputsOf } from "../contact/model-case.ts";
import { exactBack, loadPlaceOf, massOf, treeOf } from "./model-forms.ts";

/** The reference case with girth straps, loaded as somebody typed it. */
const inputs = inputsOf("ct-horse-girth");
const back = exactBack(inputs);
export const TREE = treeOf(inputs);

/** Typed places of a case that loads are read from. */
export interface Typed {
  readonly rides?: object;
  readonly girthing?: object;
  readonly bars?: object;
  readonly strapOnPoint?: string;
  readonly horse?: object;
}

export function loadsFor({
  rides = {},
  girthing = {},
  bars = {},
  strapOnPoint = "no",
  horse = {},
}: Typed): LoadsRead {
  const survey = caseSchema.parse({
    format: "treewright-case",
    version: CASE_VERSION,
    title: "invented",
    visit: { date: "2031-04-02" },
    rider: { rides },
    saddle: { name: "invented", girthing, bars, bearing: { strapOnPoint } },
    horses: [{ name: "invented", ...horse }],
  });
  const [first] = survey.horses;
  if (first === undefined) throw new Error("no horse");
  return loadsRead(survey, first);
}

export function sittingFor(typed: Typed, more: Deviations = {}): Sitting {
  const deviations = { ...loadPlaceOf(inputs), ...more };
  const surface = back.surface(deviations);
  return { tree: TREE, back, surface, mass: massOf(inputs), deviations, loads: loadsFor(typed) };
}

export const problemFor = (typed: Typed, more: Deviations = {}, mesh: Mesh = MESHES.sweep): SittingProblem =>
  problemOf(sittingFor(typed, more), mesh);

export const restFor = (typed: Typed, more: Deviations = {}, mesh: Mesh = MESHES.sweep): Rested =>
  restOf(sittingFor(typed, more), mesh);

export function pressedFor(typed: Typed, more: Deviations = {}, mesh: Mesh = MESHES.sweep): Rest {
  const rest = restFor(typed, more, mesh).pressed();
  if (!rest.ok) throw new Error(`does not rest: ${rest.why}`);
  return rest;
}

export function mountedOn(from: "ground" | "platform"): Mounting {
  const found = restFor({}).states()?.mounting[from];
  if (found?.ok !== true) throw new Error(`mounting from ${from}: ${found?.why}`);
  return found;
}
