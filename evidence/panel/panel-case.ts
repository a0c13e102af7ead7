import { type PanelAnswer, panelCaseOf, panelOf } from "../../core/src/answer/panel.ts";
import { readyFor } from "../../core/src/answer/ready.ts";
import { roadOf, toJudge } from "../../core/src/answer/road.ts";
import { settledAt } from "../../core/src/answer/settle.ts";
import { MESHES } from "../../core/src/fit/panel-cells.ts";
import { judgeCase } from "../../core/src/judge/judge-case.ts";
import { AS_FOUND } from "../../core/src/reach/move.ts";
import type { PanelCase } from "../../core/src/work/panel/propose.ts";
import { fileOf, surveyFrom } from "../answer/examples.ts";

/** A file that is changed in place before it is read. */
// biome-ignore lint/suspicious/noExplicitAny: a case file as typed, changed at will
export type Draft = any;

export function draftOf(name: string, change: (file: Draft) => void): Draft {
  const file: Draft = structuredClone(fileOf(name));
  change(file);
  return file;
}

/** The panel's answer of a file, with the panel asked for whatever the work answer is. */
export function panelAnswer(file: Draft): PanelAnswer | undefined {
  const survey = surveyFrom(file);
  const road = roadOf(survey, 0, 1);
  const { answers } = judgeCase(toJudge(road));
  const work = { ...answers.work, also: ["panel" as const] };
  return panelOf(survey, settledAt(road, undefined), { ...answers, work, setting: undefined }, 1);
}

export function panelCase(file: Draft): PanelCase {
  const survey = surveyFrom(file);
  const ready = readyFor(survey, 0, 1, MESHES.draw);
  const [horse] = survey.horses;
  const tree = ready.today?.tree;
  const found = horse && tree && panelCaseOf(survey, horse, ready, tree, AS_FOUND);
  if (found === undefined) throw new Error("no panel to be looked at");
  return found;
}

/** The near side of each trace falls away more steeply by so much of its height, and no sign of slip was seen. */
export function hollowNear(file: Draft, part: number): void {
  for (const trace of file.horses[0].traces) {
    const fall = ([y, z]: [number, number]) => [y, y < 0 ? z * (1 + part) : z];
    trace.points = trace.points.map(fall);
    trace.repeats = (trace.repeats ?? []).map((points: [number, number][]) => points.map(fall));
  }
}

export const FLAT = "06-panel-flat";
export const EVEN = "08-nothing-to-do";
/** An even saddle on a horse whose near side is hollow by about 5 degrees. */
export const hollowCase = (): Draft => draftOf(EVEN, (file) => hollowNear(file, 0.18));
