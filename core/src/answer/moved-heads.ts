import type { Fit } from "../fit/fit.ts";
import { MESHES } from "../fit/panel-cells.ts";
import type { MeasuredLimit } from "../judge/input.ts";
import { measureLimits } from "../judge/measure.ts";
import type { Judged } from "../judge/remedy/judged.ts";
import { afterChange, judgeAll } from "../judge/remedy/whole.ts";
import { opened } from "../reach/move.ts";
import type { Setting } from "../reach/setting.ts";
import type { Survey } from "../survey/case.ts";
import type { ByStation } from "../terms/places.ts";
import { computedToday, firstDoubts, limitsAfter } from "./candidates.ts";
import { type Placed, placedAlong } from "./placed.ts";
import { type Ready, readyFor } from "./ready.ts";
import { fitOf, type Whole, wholeAt } from "./whole.ts";

/** A head moved by so much, as the page shows it: plain data, fit to be sent from a worker. */
export interface SweepPoint {
  readonly changeMm: number;
  /** Inside the tips after the change, mm. */
  readonly spreadMm: number;
  readonly fit: Fit;
  /** Every limit after the change, judged by best estimate; the ridden check decides. */
  readonly limits: readonly Judged[];
  readonly placed: ByStation<Placed | undefined>;
  /** Distance of each station behind the tree points, mm; undefined where the bearing was not read. */
  readonly stationsMm: ByStation<number> | undefined;
}

/** Moves the head of one case and horse; undefined where not even the head was read. */
export interface MovedHeads {
  at(changeMm: number): SweepPoint | undefined;
}

/** Forms and today's rest are worked out once. Each head starts from today's pose, so the order of asking changes no digit. */
export function movedHeads(survey: Survey, horseIndex: number, seed: number): MovedHeads {
  const ready = readyFor(survey, horseIndex, seed, MESHES.sweep);
  const horse = survey.horses[horseIndex];
  if (horse === undefined) throw new RangeError(`horse: ${horseIndex} is not one of ${survey.horses.length}`);
  const today: readonly MeasuredLimit[] = [
    ...measureLimits(survey, horseIndex),
    ...computedToday(horse, ready, ready.first),
  ];
  return { at: (changeMm) => pointAt(survey, ready, today, changeMm) };
}

function pointAt(
  survey: Survey,
  ready: Ready,
  today: readonly MeasuredLimit[],
  changeMm: number,
): SweepPoint | undefined {
  const { forms } = ready;
  const start = ready.today?.pose;
  const whole =
    changeMm === 0 ? ready.today : wholeAt(ready.means, opened(changeMm), { mesh: MESHES.sweep, start });
  if (whole === undefined) return undefined;
  const after = limitsAfter(survey, ready, whole, firstDoubts(ready.first, changeMm));
  const all = afterChange(today, { setting: asSetting(changeMm, whole), after, others: [] });
  return {
    changeMm,
    spreadMm: whole.head.spreadMm,
    fit: fitOf(whole, changeMm),
    limits: judgeAll(all, "exchange", undefined),
    placed: placedAlong(forms, whole),
    stationsMm: whole.tree?.stationsMm,
  };
}

function asSetting(changeMm: number, whole: Whole): Setting {
  return {
    id: "looked-at",
    way: "imagined",
    changeMm,
    spreadMm: whole.head.spreadMm,
    halfTurnRad: undefined,
    plate: undefined,
    needsBare: false,
    shutBy: [],
  };
}
