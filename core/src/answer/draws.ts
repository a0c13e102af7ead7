import type { Pose } from "../engine/contact/problem.ts";
import { spreadOf } from "../engine/quantile.ts";
import { MESHES } from "../fit/panel-cells.ts";
import { AS_FOUND, type Moving } from "../reach/move.ts";
import { drawDeviations } from "../shape/draw.ts";
import type { Deviations } from "../shape/model.ts";
import { figuresOf, horseSides } from "./figures.ts";
import { type Moved, type MovedDoubt, movedBy } from "./follows.ts";
import type { Forms } from "./forms.ts";
import { inDraw, type Whole, wholeAt } from "./whole.ts";

/** Draws that an answer rests on. */
export const DRAWS = 1000;
/** Draws for a first look at every doubt, before a setting is chosen. */
export const FIRST_DRAWS = 60;
/** The change at which the doubt of what follows is first looked at; for others it is scaled, the response being near linear. */
export const TRIAL_MM = 10;

/** Values of every figure in a range of draws; NaN where a draw gave none. Index 0 is draw `from`. */
export interface DrawTable {
  readonly from: number;
  readonly to: number;
  readonly values: { readonly [key: string]: readonly number[] };
}

/** Where the two settings rest at the means: the draws start there. */
export interface Starts {
  readonly today: Pose | undefined;
  readonly after: Pose | undefined;
}

/** The figures of today and of one other setting in draws from..to-1. Every draw stands by itself, so ranges can be shared out. */
export function drawRange(
  forms: Forms,
  moving: Moving | undefined,
  seed: number,
  from: number,
  to: number,
  starts: Starts,
): DrawTable {
  const rows: Record<string, number>[] = [];
  for (let index = from; index < to; index++)
    rows.push(oneDraw(forms, moving, drawDeviations(forms.uncertain, seed, index), starts));
  const keys = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  return {
    from,
    to,
    values: Object.fromEntries(keys.map((key) => [key, rows.map((row) => row[key] ?? Number.NaN)])),
  };
}

function oneDraw(
  forms: Forms,
  moving: Moving | undefined,
  deviations: Deviations,
  starts: Starts,
): Record<string, number> {
  const drawn = inDraw(forms, deviations);
  const mesh = MESHES.draw;
  const today = wholeAt(drawn, AS_FOUND, { mesh, start: starts.today });
  const row: Record<string, number> = {};
  if (today === undefined) return row;
  note(row, "today", today);
  noteWanted(row, today);
  for (const figure of horseSides(forms, deviations)) row[figure.key] = figure.value;
  const after = moving && wholeAt(drawn, moving, { mesh, start: starts.after });
  if (after === undefined) return row;
  note(row, "after", after);
  for (const [key, value] of Object.entries(flat(movedBy(today, after)))) row[`moved ${key}`] = value;
  return row;
}

function note(row: Record<string, number>, when: "today" | "after", whole: Whole): void {
  for (const figure of figuresOf(whole)) row[`${when} ${figure.key}`] = figure.value;
  if (whole.rest) row[`${when} rests`] = whole.rest.ok ? 1 : 0;
}

function noteWanted(row: Record<string, number>, { wanted }: Whole): void {
  for (const temper of ["cold", "warm"] as const) {
    const head = wanted[temper];
    if (head === undefined) continue;
    row[`wanted spread, ${temper}`] = head.spreadMm;
    row[`wanted half-angle, ${temper}`] = head.halfAngleRad;
  }
}

function flat(moved: Moved): Record<string, number> {
  const { channelMm, ...others } = moved;
  const all = { ...others, front: channelMm.front, mid: channelMm.mid, rear: channelMm.rear };
  return Object.fromEntries(
    Object.entries(all).filter((entry): entry is [string, number] => entry[1] !== undefined),
  );
}

/** Ranges put together by their index, so that who drew which makes no difference. */
export function joined(tables: readonly DrawTable[]): DrawTable {
  const inOrder = [...tables].sort((a, b) => a.from - b.from);
  const keys = [...new Set(inOrder.flatMap((table) => Object.keys(table.values)))].sort();
  const column = (key: string) =>
    inOrder.flatMap(
      (table) => table.values[key] ?? Array.from({ length: table.to - table.from }, () => Number.NaN),
    );
  return {
    from: inOrder[0]?.from ?? 0,
    to: inOrder.at(-1)?.to ?? 0,
    values: Object.fromEntries(keys.map((key) => [key, column(key)])),
  };
}

/** Half of the central 95 % of a figure's draws; undefined where there are too few to tell. */
export function doubtOf(table: DrawTable, key: string): number | undefined {
  const drawn = (table.values[key] ?? []).filter((value) => !Number.isNaN(value));
  return drawn.length < LEAST_DRAWN ? undefined : spreadOf(drawn);
}
const LEAST_DRAWN = 20;

/** Part of the draws in which the saddle came to rest; undefined where rest was not computed. */
export function restingPart(table: DrawTable, when: "today" | "after"): number | undefined {
  const drawn = table.values[`${when} rests`];
  return drawn && drawn.reduce((sum, one) => sum + (Number.isNaN(one) ? 0 : one), 0) / drawn.length;
}

/** Doubt of what follows, `scale` times what was drawn. */
export function movedDoubt(table: DrawTable, scale: number): MovedDoubt {
  const of = (key: string) => {
    const u = doubtOf(table, `moved ${key}`);
    return u === undefined ? undefined : u * scale;
  };
  return {
    clearanceMm: of("clearanceMm"),
    besideMm: of("besideMm"),
    seatDeg: of("seatDeg"),
    channelMm: { front: of("front"), mid: of("mid"), rear: of("rear") },
    spreadMm: of("spreadMm"),
    halfTurnDeg: of("halfTurnDeg"),
    frontRiseMm: of("frontRiseMm"),
    rearRiseMm: of("rearRiseMm"),
  };
}
