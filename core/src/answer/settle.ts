import { MESHES } from "../fit/panel-cells.ts";
import type { MeasuredLimit } from "../judge/input.ts";
import { type JudgedCase, judgeCase } from "../judge/judge-case.ts";
import { AS_FOUND, type Moving } from "../reach/move.ts";
import type { Setting } from "../reach/setting.ts";
import { type AfterDoubts, drawnDoubts, limitsAfter } from "./candidates.ts";
import { type DrawTable, drawRange, joined } from "./draws.ts";
import { type MovedDoubt, movedBy } from "./follows.ts";
import { type PlacementSweep, placementSweep } from "./placement.ts";
import type { Ready } from "./ready.ts";
import { type Road, toJudge } from "./road.ts";
import { movingOf } from "./sweep.ts";
import { type Whole, wholeAt } from "./whole.ts";

/** Today's and the chosen setting worked out finely at the means, and what drawing them needs. */
export interface Settled {
  readonly ready: Ready;
  readonly setting: Setting | undefined;
  readonly today: Whole;
  readonly after: Whole | undefined;
  /** Fine less coarse mesh at the means: added to the doubt of what follows. */
  readonly meshDoubt: MovedDoubt | undefined;
  /** Put to and fro along the back, today and after the change. */
  readonly placement: {
    readonly today: PlacementSweep | undefined;
    readonly after: PlacementSweep | undefined;
  };
}

/** What is settled, with its draws so far. */
export interface Drawn {
  readonly settled: Settled;
  readonly table: DrawTable;
}

/** Undefined where there is nothing to settle: a flag, or no head read. */
export function settledAt(road: Road, setting: Setting | undefined): Settled | undefined {
  const ready = road.own?.ready;
  const at = (moving: Moving, mesh: keyof typeof MESHES) =>
    ready && wholeAt(ready.means, moving, { mesh: MESHES[mesh], start: ready.today?.pose });
  const today = at(AS_FOUND, "fine");
  if (ready === undefined || today === undefined) return undefined;
  const moved = setting?.way === "as-found" ? undefined : setting;
  const moving = moved && movingOf(moved, ready.forms);
  const after = moving && at(moving, "fine");
  const coarse = { today: at(AS_FOUND, "draw"), after: moving && at(moving, "draw") };
  const meshDoubt =
    after &&
    coarse.today &&
    coarse.after &&
    apart(movedBy(today, after), movedBy(coarse.today, coarse.after));
  const placement = {
    today: placementSweep(ready.forms, AS_FOUND, today.pose),
    after: moving && placementSweep(ready.forms, moving, after?.pose),
  };
  return { ready, setting: moved, today, after, meshDoubt, placement };
}

/** Draws from..to-1 at today's and the chosen setting. */
export function drawAt(
  { ready, setting, today, after }: Settled,
  seed: number,
  from: number,
  to: number,
): DrawTable {
  const moving = setting && movingOf(setting, ready.forms);
  return drawRange(ready.forms, moving, seed, from, to, { today: today.pose, after: after?.pose });
}

/** The same with so many draws more. */
export function drawnOn({ settled, table }: Drawn, seed: number, more: number): Drawn {
  return { settled, table: joined([table, drawAt(settled, seed, table.to, table.to + more)]) };
}

/** Judged again, with the limits of today's and of every drawn setting as sure as their draws make them. */
export function judgedWith(road: Road, drawn: readonly Drawn[]): JudgedCase {
  const input = toJudge(road, drawn.at(-1)?.table);
  const candidates = input.candidates.map((one) => {
    const found = drawn.find(({ settled }) => settled.setting?.id === one.setting.id);
    return found === undefined ? one : { ...one, after: drawnLimits(road, found) };
  });
  return judgeCase({ ...input, candidates });
}

function drawnLimits(road: Road, { settled, table }: Drawn): readonly MeasuredLimit[] {
  const { ready, today, after } = settled;
  return limitsAfter(road.survey, { ...ready, today }, after, doubtsOf(settled, table));
}

/** What is settled without its change, where that is not the setting that was answered. */
export function fitting(settled: Settled, setting: Setting | undefined): Settled {
  const same = settled.setting?.id === setting?.id;
  return same
    ? settled
    : {
        ...settled,
        setting: undefined,
        after: undefined,
        meshDoubt: undefined,
        placement: { ...settled.placement, after: undefined },
      };
}

/** Doubts at the chosen setting: what was drawn, and what the coarser mesh of the draws may hide. */
export function doubtsOf({ meshDoubt }: Settled, table: DrawTable): AfterDoubts {
  const drawn = drawnDoubts(table);
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
