import type { Pose } from "../engine/contact/problem.ts";
import { type Room, roomFor } from "../engine/contact/room.ts";
import { cellsOf, MESHES } from "../fit/panel-cells.ts";
import type { RiddenPoses } from "../fit/ridden.ts";
import { AS_FOUND, type Moving, opened } from "../reach/move.ts";
import { drawDeviations } from "../shape/draw.ts";
import type { Deviations } from "../shape/model.ts";
import type { DrawTable } from "./draw-table.ts";
import { figuresOf, horseSides } from "./figures.ts";
import { type Moved, movedBy } from "./follows.ts";
import type { Forms } from "./forms.ts";
import { noteGaits } from "./gait-moves.ts";
import { inDraw, type NearBack, type Whole, wholeAt } from "./whole.ts";

/** Draws that an answer rests on. */
export const DRAWS = 1000;
/** Draws for a first look at every doubt, before a setting is chosen. */
export const FIRST_DRAWS = 60;
/** The change at which the doubt of what follows is first looked at; for others it is scaled, the response being near linear. */
export const TRIAL_MM = 10;

/** The first look: today and a trial change, from where the saddle rests at the means. */
export function firstLook(forms: Forms, start: Pose | undefined, seed: number): DrawTable {
  const trial = { name: TRIAL, moving: opened(TRIAL_MM), start };
  return drawRange(forms, { start }, [trial], seed, 0, FIRST_DRAWS);
}
export const TRIAL = "trial";

/** A setting that is drawn: the name its figures are kept under, and where it rests at the means. */
export interface ToDraw {
  readonly name: string;
  readonly moving: Moving;
  /** The draws start there. */
  readonly start: Pose | undefined;
  /** The back about the places of its cells there; without it the whole back is read. */
  readonly near?: NearBack | undefined;
  /** Where its gaits come to at the means; without them the gaits are not drawn. */
  readonly rides?: RiddenPoses | undefined;
}

/**
 * The figures of today and of other settings in draws from..to-1. Every draw stands by itself, so ranges can be shared
 * out; all settings of one draw share its deviations.
 */
export function drawRange(
  forms: Forms,
  today: Omit<ToDraw, "name" | "moving">,
  others: readonly ToDraw[],
  seed: number,
  from: number,
  to: number,
): DrawTable {
  const rows: Record<string, number>[] = [];
  const room = roomFor(cellsOf(MESHES.draw));
  const all = { today: { ...today, name: "today", moving: AS_FOUND }, others, room };
  for (let index = from; index < to; index++)
    rows.push(oneDraw(forms, all, drawDeviations(forms.uncertain, seed, index)));
  const keys = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  return {
    from,
    to,
    values: Object.fromEntries(keys.map((key) => [key, rows.map((row) => row[key] ?? Number.NaN)])),
  };
}

/** A draw is at rest when what is left over is a thousandth of what its mesh leaves out. */
const AT_REST_IN_DRAWS = 1e-6;

interface All {
  readonly today: ToDraw;
  readonly others: readonly ToDraw[];
  readonly room: Room;
}

function oneDraw(forms: Forms, { today, others, room }: All, deviations: Deviations): Record<string, number> {
  const drawn = inDraw(forms, deviations);
  const mesh = MESHES.draw;
  const at = ({ moving, near }: ToDraw, start: Pose | undefined) =>
    wholeAt(drawn, moving, { mesh, room, start, within: AT_REST_IN_DRAWS, surface: near?.(deviations) });
  const row: Record<string, number> = {};
  const found = at(today, today.start);
  if (found === undefined) return row;
  note(row, today.name, found);
  noteWanted(row, found);
  for (const figure of horseSides(forms, deviations)) row[figure.key] = figure.value;
  for (const other of others) {
    const after = at(other, besides(today.start, found.pose, other.start));
    if (after === undefined) continue;
    note(row, other.name, after);
    if (other.rides)
      noteGaits(row, other.name, { whole: found, rides: today.rides }, { whole: after, rides: other.rides });
    for (const [key, value] of Object.entries(flat(movedBy(found, after))))
      row[`moved ${other.name} ${key}`] = value;
  }
  return row;
}

/** Where another setting likely rests in a draw: as far from its mean as today's came. */
function besides(mean: Pose | undefined, drawn: Pose | undefined, other: Pose | undefined): Pose | undefined {
  if (mean === undefined || drawn === undefined || other === undefined) return other;
  return {
    heave: other.heave + drawn.heave - mean.heave,
    pitch: other.pitch + drawn.pitch - mean.pitch,
    roll: other.roll + drawn.roll - mean.roll,
  };
}

function note(row: Record<string, number>, name: string, whole: Whole): void {
  for (const figure of figuresOf(whole)) row[`${name} ${figure.key}`] = figure.value;
  if (whole.rest) row[`${name} rests`] = whole.rest.ok ? 1 : 0;
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
