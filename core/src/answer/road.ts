import { MESHES } from "../fit/panel-cells.ts";
import { horseShutsFit } from "../judge/horse-flag.ts";
import type { CaseToJudge } from "../judge/input.ts";
import type { Setting } from "../reach/setting.ts";
import { settingsOf } from "../reach/settings.ts";
import type { Survey } from "../survey/case.ts";
import type { BySide, Side } from "../terms/places.ts";
import { COARSE, candidatesOf, computedToday, fillOf } from "./candidates.ts";
import type { DrawTable } from "./draw-table.ts";
import { type Ready, readyFor } from "./ready.ts";
import { type Tried, tryAll } from "./sweep.ts";

/** Everything that is computed before anything is judged. */
export interface Road {
  readonly survey: Survey;
  readonly horseIndex: number;
  readonly settings: readonly Setting[];
  /** Undefined on a horse flag (then no setting, pressure or fit is computed), or where not even the head was read. */
  readonly own: Tried | undefined;
  readonly others: readonly Tried[];
  /** Readings that the whole fit needs and that are missing. */
  readonly lacking: readonly string[];
}

/** Halves of a wanted head that differ by less than this are even, mm (assumption: below what a curve reads). */
const EVEN_MM = 2;
/** A look at what another reading would change tries every press that is open, and of those that are shut one in so many millimetres. */
const LOOK_STEP_MM = 4;

export function roadOf(survey: Survey, horseIndex: number, seed: number): Road {
  const none = { survey, horseIndex, settings: [], own: undefined, others: [], lacking: [] };
  if (horseShutsFit(survey, horseIndex)) return none;
  const ready = readyFor(survey, horseIndex, seed, MESHES.sweep);
  if (ready.today === undefined) return { ...none, lacking: ready.forms.lacking };
  const settings = settingsOf(survey, ready.today.head.spreadMm);
  const others = survey.horses
    .map((_, index) => index)
    .filter((index) => index !== horseIndex && !horseShutsFit(survey, index))
    .map((index) => tryAll(readyFor(survey, index, seed, COARSE), settings, COARSE));
  return {
    survey,
    horseIndex,
    settings,
    own: tryAll(ready, settings, MESHES.sweep),
    others,
    lacking: ready.forms.lacking,
  };
}

/** Places of the case that give form to back, head or tree, or say what the head can become. */
const FORMING =
  /^saddle\.(head|reinforcement|bearing|girthing|bars|build|mounting|past)\b|^platesAtHand|^rider\.|\.(traces|profile)\b/;

/**
 * The road with one reading changed: built anew, coarsely and on the doubts already looked at, where the reading gives
 * form to anything; else only the readings change.
 */
export function roadWith(road: Road, survey: Survey, path: string, seed: number): Road {
  if (horseShutsFit(survey, road.horseIndex))
    return { ...road, survey, settings: [], own: undefined, others: [] };
  if (road.own !== undefined && !FORMING.test(path)) return { ...road, survey };
  const ready = readyFor(survey, road.horseIndex, seed, COARSE, road.own?.ready);
  const { lacking } = ready.forms;
  if (ready.today === undefined)
    return { ...road, survey, settings: [], own: undefined, others: [], lacking };
  const settings = settingsOf(survey, ready.today.head.spreadMm).filter(
    (one) => one.way !== "press" || one.shutBy.length === 0 || one.changeMm % LOOK_STEP_MM === 0,
  );
  const others = road.others.map(({ ready: before }) =>
    tryAll(readyFor(survey, before.horseIndex, seed, COARSE, before), settings, COARSE),
  );
  return { ...road, survey, settings, own: tryAll(ready, settings, COARSE), others, lacking };
}

const NOT_TOLD: BySide<number | undefined> = { near: undefined, off: undefined };

/** What the judge takes. `table`: draws at today's setting; without it the first look's doubts stand. */
export function toJudge(
  { survey, horseIndex, settings, own, others, lacking }: Road,
  table?: DrawTable,
): CaseToJudge {
  const rest = { survey, horseIndex, lacking };
  const horse = survey.horses[horseIndex];
  if (own === undefined || horse === undefined)
    return {
      ...rest,
      computedToday: [],
      candidates: [],
      largerSide: undefined,
      fillMm: NOT_TOLD,
      notAtRest: undefined,
    };
  return {
    ...rest,
    computedToday: computedToday(horse, own.ready, table ?? own.ready.first),
    candidates: candidatesOf(survey, settings, own, others),
    largerSide: largerSide(own.ready),
    fillMm: own.ready.today === undefined ? NOT_TOLD : fillOf(own.ready.forms, own.ready.today),
    notAtRest: whyNot(own.ready),
  };
}

const whyNot = ({ today }: Ready) => (today?.rest?.ok === false ? today.rest.why : undefined);

function largerSide({ today }: Ready): Side | undefined {
  const wanted = today?.wanted.cold ?? today?.wanted.warm;
  if (wanted === undefined) return undefined;
  return Math.abs(wanted.sides.near.halfSpreadMm - wanted.sides.off.halfSpreadMm) < EVEN_MM
    ? undefined
    : wanted.larger;
}
