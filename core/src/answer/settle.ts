import { MESHES, type Mesh } from "../fit/panel-cells.ts";
import type { MeasuredLimit } from "../judge/input.ts";
import { type JudgedCase, judgeCase } from "../judge/judge-case.ts";
import { AS_FOUND } from "../reach/move.ts";
import type { Setting } from "../reach/setting.ts";
import { type AfterDoubts, drawnDoubts, limitsAfter } from "./candidates.ts";
import { type DrawTable, joined } from "./draw-table.ts";
import { drawRange, type ToDraw } from "./draws.ts";
import { type MovedDoubt, movedBy } from "./follows.ts";
import { type PlacementSweep, placementSweep } from "./placement.ts";
import type { Ready } from "./ready.ts";
import { type Road, toJudge } from "./road.ts";
import { movingOf } from "./sweep.ts";
import { type Whole, wholeAt } from "./whole.ts";

/** A setting worked out finely at the means, and what drawing it needs. */
export interface Changed {
  readonly setting: Setting;
  readonly after: Whole | undefined;
  /** Fine less coarse mesh at the means: added to the doubt of what follows. */
  readonly meshDoubt: MovedDoubt | undefined;
  readonly drawn: ToDraw;
  /** Put to and fro along the back. */
  placement(): PlacementSweep | undefined;
}

/** Today's setting, the chosen one, and those beside it. */
export interface Settled {
  readonly ready: Ready;
  readonly today: Whole;
  readonly drawnToday: Pick<ToDraw, "start" | "near" | "rides">;
  /** Out of the saddle and going up, as found. */
  states(): ReturnType<Whole["states"]>;
  readonly placementToday: PlacementSweep | undefined;
  /** The chosen setting first, then its neighbours, two each side; empty where nothing is changed. */
  readonly changed: readonly Changed[];
}

/** What is settled, with its draws so far. */
export interface Drawn {
  readonly settled: Settled;
  readonly table: DrawTable;
}

/** Settings drawn on each side of the chosen one. */
const BESIDE = 2;

/** Undefined where there is nothing to settle: a flag, or no head read. */
export function settledAt(road: Road, setting: Setting | undefined): Settled | undefined {
  const ready = road.own?.ready;
  const today = ready && wholeAt(ready.means, AS_FOUND, { mesh: MESHES.fine, start: ready.today?.pose });
  if (ready === undefined || today === undefined) return undefined;
  const coarse = wholeAt(ready.means, AS_FOUND, { mesh: MESHES.draw, start: today.pose });
  const chosen = setting === undefined || setting.way === "as-found" ? [] : [setting];
  const all = chosen.flatMap((one) => [one, ...neighboursOf(one, road.settings)]);
  return {
    ready,
    today,
    drawnToday: { start: coarse?.pose, near: coarse?.near(), rides: coarse?.ridden().poses },
    states: kept(() => today.states()),
    placementToday: placementSweep(ready.forms, AS_FOUND, today.pose),
    changed: all.map((one) => changedTo(one, one === setting, ready, today, coarse)),
  };
}

/** Those next to it by their change, two each side; today's is not among them. */
function neighboursOf(setting: Setting, settings: readonly Setting[]): readonly Setting[] {
  const others = settings.filter(({ way, id }) => way !== "as-found" && id !== setting.id);
  const narrower = others.filter(({ changeMm }) => changeMm < setting.changeMm);
  const wider = others.filter(({ changeMm }) => changeMm >= setting.changeMm);
  const byChange = (a: Setting, b: Setting) => a.changeMm - b.changeMm;
  return [...narrower.sort(byChange).slice(-BESIDE), ...wider.sort(byChange).slice(0, BESIDE)];
}

function changedTo(
  setting: Setting,
  isChosen: boolean,
  ready: Ready,
  today: Whole,
  coarseToday: Whole | undefined,
): Changed {
  const moving = movingOf(setting, ready.forms);
  const at = (mesh: Mesh) => wholeAt(ready.means, moving, { mesh, start: today.pose });
  const [after, coarse] = [at(MESHES.fine), at(MESHES.draw)];
  const meshDoubt =
    after && coarse && coarseToday && apart(movedBy(today, after), movedBy(coarseToday, coarse));
  return {
    setting,
    after,
    meshDoubt,
    drawn: {
      name: setting.id,
      moving,
      start: coarse?.pose,
      near: coarse?.near(),
      rides: isChosen ? coarse?.ridden().poses : undefined,
    },
    placement: kept(() => placementSweep(ready.forms, moving, after?.pose)),
  };
}

/** Made when it is first asked for, and kept. */
function kept<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** Draws from..to-1 at today's, the chosen setting and those beside it. */
export function drawAt(
  { ready, drawnToday, changed }: Settled,
  seed: number,
  from: number,
  to: number,
): DrawTable {
  return drawRange(
    ready.forms,
    drawnToday,
    changed.map(({ drawn }) => drawn),
    seed,
    from,
    to,
  );
}

/** The same with so many draws more. */
export function drawnOn({ settled, table }: Drawn, seed: number, more: number): Drawn {
  return { settled, table: joined([table, drawAt(settled, seed, table.to, table.to + more)]) };
}

/** Judged again, with the limits of today's and of every drawn setting as sure as their draws make them. */
export function judgedWith(road: Road, drawn: readonly Drawn[]): JudgedCase {
  const input = toJudge(road, drawn.at(-1)?.table);
  const candidates = input.candidates.map((one) => {
    const found = drawn.find(({ settled }) => changedIn(settled, one.setting) !== undefined);
    return found === undefined ? one : { ...one, after: drawnLimits(road, found, one.setting) };
  });
  return judgeCase({ ...input, candidates });
}

function drawnLimits(road: Road, { settled, table }: Drawn, setting: Setting): readonly MeasuredLimit[] {
  const { ready, today } = settled;
  const changed = changedIn(settled, setting);
  if (changed === undefined) return [];
  return limitsAfter(road.survey, { ...ready, today }, changed.after, doubtsOf(changed, table));
}

/** The settled change to a setting; undefined where it was not settled. */
export function changedIn({ changed }: Settled, setting: Setting | undefined): Changed | undefined {
  return changed.find((one) => one.setting.id === setting?.id);
}

/** Doubts at a setting: what was drawn, and what the coarser mesh of the draws may hide. */
export function doubtsOf({ setting, meshDoubt }: Changed, table: DrawTable): AfterDoubts {
  const drawn = drawnDoubts(table, setting.id);
  return { ...drawn, moved: meshDoubt === undefined ? drawn.moved : plus(drawn.moved, meshDoubt) };
}

const apart = (a: MovedDoubt, b: MovedDoubt): MovedDoubt =>
  eachOf(a, b, (one, other) => Math.abs(one - other));
const plus = (a: MovedDoubt, b: MovedDoubt): MovedDoubt => eachOf(a, b, (one, other) => one + other);

function eachOf(a: MovedDoubt, b: MovedDoubt, of: (one: number, other: number) => number): MovedDoubt {
  const both = (one: number | undefined, other: number | undefined) =>
    one === undefined || other === undefined ? undefined : of(one, other);
  return {
    clearanceMm: both(a.clearanceMm, b.clearanceMm),
    besideMm: both(a.besideMm, b.besideMm),
    seatDeg: both(a.seatDeg, b.seatDeg),
    channelMm: {
      front: both(a.channelMm.front, b.channelMm.front),
      mid: both(a.channelMm.mid, b.channelMm.mid),
      rear: both(a.channelMm.rear, b.channelMm.rear),
    },
    spreadMm: both(a.spreadMm, b.spreadMm),
    halfTurnDeg: both(a.halfTurnDeg, b.halfTurnDeg),
    frontRiseMm: both(a.frontRiseMm, b.frontRiseMm),
    rearRiseMm: both(a.rearRiseMm, b.rearRiseMm),
  };
}
