import { MESHES } from "../fit/panel-cells.ts";
import { fillNeededMm } from "../fit/sections.ts";
import type { Candidate, MeasuredLimit } from "../judge/input.ts";
import { measureLimits } from "../judge/measure.ts";
import type { Setting } from "../reach/setting.ts";
import type { Survey, SurveyedHorse } from "../survey/case.ts";
import { type BySide, SIDES } from "../terms/places.ts";
import { type DrawTable, doubtOf, movedDoubt } from "./draw-table.ts";
import { TRIAL, TRIAL_MM } from "./draws.ts";
import { feelersAfter, templateFaces, templateOffered } from "./feelers.ts";
import { asLimit, type Figure, figuresOf, horseSides } from "./figures.ts";
import { carried, type MovedDoubt, movedBy } from "./follows.ts";
import type { Forms } from "./forms.ts";
import { pressedAfter, pressedLimits } from "./pressed-limits.ts";
import type { Ready } from "./ready.ts";
import type { Tried } from "./sweep.ts";
import type { Whole } from "./whole.ts";

/** Limits that are computed as they stand today, as sure as the draws make them. */
export function computedToday(
  horse: SurveyedHorse,
  { forms, today }: Ready,
  table: DrawTable,
): readonly MeasuredLimit[] {
  if (today === undefined) return [];
  return [
    ...figuresLeft(horse, today).map((figure) => asLimit(figure, doubtOf(table, `today ${figure.key}`))),
    ...templateFaces(horse, today.head),
    ...horseSides(forms, {}).map((figure) => asLimit(figure, doubtOf(table, figure.key))),
    ...pressedLimits(today),
  ];
}

/** A template offered up takes the place of the front section that is computed from two readings. */
function figuresLeft(horse: SurveyedHorse, whole: Whole): readonly Figure[] {
  const all = figuresOf(whole);
  return templateOffered(horse, whole.head) ? all.filter(({ rule }) => rule === "face-rail") : all;
}

/** How sure the computed limits after a setting are. */
export interface AfterDoubts {
  figure(figure: Figure): number | undefined;
  readonly moved: MovedDoubt;
}

/** From the first look: a figure is as sure as it is today, and what follows grows with the change. */
export function firstDoubts(first: DrawTable, changeMm: number): AfterDoubts {
  return {
    figure: (figure) => doubtOf(first, `today ${figure.key}`),
    moved: movedDoubt(first, TRIAL, Math.abs(changeMm) / TRIAL_MM),
  };
}

/** From the draws at the setting itself, by its id. */
export function drawnDoubts(table: DrawTable, id: string): AfterDoubts {
  return { figure: (figure) => doubtOf(table, `${id} ${figure.key}`), moved: movedDoubt(table, id, 1) };
}

/** Panel fill at its thickest that each side needs under a whole, mm; undefined where it cannot be told. */
export function fillOf({ back }: Forms, { tree, sections }: Whole): BySide<number | undefined> {
  if (tree === undefined || back === undefined) return { near: undefined, off: undefined };
  return fillNeededMm(sections.cold, back, tree);
}

/** All limits of one horse after a setting: the computed ones, and the readings carried over. */
export function limitsAfter(
  survey: Survey,
  ready: Ready,
  after: Whole | undefined,
  doubts: AfterDoubts,
): readonly MeasuredLimit[] {
  const { today, horseIndex } = ready;
  const horse = survey.horses[horseIndex];
  if (today === undefined || after === undefined || horse === undefined) return [];
  const readings = measureLimits(survey, horseIndex);
  return [
    ...figuresLeft(horse, after).map((figure) => asLimit(figure, doubts.figure(figure))),
    ...carried(readings, movedBy(today, after), doubts.moved),
    ...feelersAfter(horse, today.head, after.head, doubts.moved.halfTurnDeg),
    ...fillAfter(ready.forms, after),
    ...pressedAfter(today, after),
  ];
}

/** The fill that each side would still need, mm. */
function fillAfter(forms: Forms, after: Whole): readonly MeasuredLimit[] {
  const fill = fillOf(forms, after);
  return SIDES.flatMap((side) => {
    const value = fill[side];
    return value === undefined ? [] : [{ rule: "fill", at: side, value, u: undefined, missing: [], side }];
  });
}

/** Every setting with the whole it makes for this horse, and for the others that wear the saddle. */
export function candidatesOf(
  survey: Survey,
  settings: readonly Setting[],
  own: Tried,
  others: readonly Tried[],
): readonly Candidate[] {
  const after = ({ ready, wholes }: Tried, setting: Setting, i: number) =>
    limitsAfter(survey, ready, wholes[i], firstDoubts(ready.first, setting.changeMm));
  return settings.map((setting, i) => ({
    setting,
    after: after(own, setting, i),
    others: others
      .filter(({ ready }) => ready.today !== undefined)
      .map((other) => ({ horseIndex: other.ready.horseIndex, after: after(other, setting, i) })),
  }));
}

/** Mesh for the other horses of a saddle, and for looking at what another reading would change. */
export const COARSE = MESHES.draw;
