import type { Fit } from "../fit/fit.ts";
import type { RiderStates } from "../fit/states.ts";
import { type BodyAdvice, bodyAdvice } from "../judge/body-advice.ts";
import type { JudgedCase } from "../judge/judge-case.ts";
import type { Answers } from "../judge/judgement.ts";
import type { Setting } from "../reach/setting.ts";
import type { Head } from "../shape/model.ts";
import type { WantedHead } from "../shape/wanted-head.ts";
import type { SurveyedHorse } from "../survey/case.ts";
import type { ByStation } from "../terms/places.ts";
import type { BendAnswer } from "./bend.ts";
import { type DrawTable, doubtOf, restingPart } from "./draw-table.ts";
import { DRAWS } from "./draws.ts";
import { type Moved, type MovedDoubt, movedBy } from "./follows.ts";
import type { FrameAnswer } from "./frame.ts";
import { type GaitMove, gaitMoves } from "./gait-moves.ts";
import { ENGINE, hashOf } from "./identity.ts";
import type { PanelAnswer } from "./panel.ts";
import { type Placed, placedAlong } from "./placed.ts";
import type { PlacementSweep } from "./placement.ts";
import type { PlatesAnswered } from "./plates-after.ts";
import type { Road } from "./road.ts";
import { type Changed, changedIn, doubtsOf, type Settled } from "./settle.ts";
import { fitOf, type Whole } from "./whole.ts";

/** How far the draws behind an answer have come. */
export interface DrawnSoFar {
  readonly count: number;
  readonly of: number;
  readonly done: boolean;
  /** Part of the draws in which the saddle came to rest, today and at the chosen setting; undefined where none was tried. */
  readonly resting: { readonly today: number | undefined; readonly after: number | undefined };
}

/** What the chosen setting changes against today, with the doubt of each difference. */
export interface Follows {
  readonly moved: Moved;
  readonly doubt: MovedDoubt;
}

/** The wanted head of this horse, for its larger side, with the doubt of its spread and half-angle. */
export interface Wanted {
  readonly head: WantedHead;
  readonly temper: "cold" | "warm";
  readonly spreadUMm: number | undefined;
  readonly halfAngleURad: number | undefined;
  /** The head as it stands today. */
  readonly today: Head;
}

/** Everything that is answered for one horse under one saddle. `horse` and `saddle` are their names. */
export interface Answer {
  readonly horse: string;
  readonly saddle: string;
  readonly horseIndex: number;
  readonly engine: string;
  /** SHA-256 over the canonical JSON of the survey. */
  readonly inputHash: string;
  readonly seed: number;
  readonly answers: Answers;
  /** Best estimate as found; undefined on a horse flag, or where not even the head was read. */
  readonly today: Fit | undefined;
  readonly chosen: Fit | undefined;
  readonly follows: Follows | undefined;
  /** Sections ready to be drawn, as they rest, as found and at the chosen setting. */
  readonly placed:
    | {
        readonly today: ByStation<Placed | undefined>;
        readonly chosen: ByStation<Placed | undefined> | undefined;
      }
    | undefined;
  /** The saddle put to and fro along the back; undefined where no fit was worked out. */
  readonly placement:
    | { readonly today: PlacementSweep | undefined; readonly after: PlacementSweep | undefined }
    | undefined;
  /** What the chosen setting does to each third in each gait, against today. */
  readonly gaitMoves: readonly GaitMove[];
  /** Half-seat, risen, mounting, as found. */
  readonly states: RiderStates | undefined;
  readonly wanted: Wanted | undefined;
  /** Worked out with the last draws. */
  readonly panel: PanelAnswer | undefined;
  /** What a press does to this head; worked out with the last draws. Never shown to an owner. */
  readonly bend: BendAnswer | undefined;
  /** The whole tree that the chosen setting makes; worked out with the last draws. */
  readonly frame: FrameAnswer | undefined;
  /** Plates at hand in their order; worked out with the last draws. */
  readonly plates: PlatesAnswered | undefined;
  /** The horse's own numbers as they were read; empty where not. */
  readonly identity: SurveyedHorse["identity"];
  /** Mass, load and condition: advice beside the answers. */
  readonly body: BodyAdvice | undefined;
  readonly settings: readonly Setting[];
  readonly lacking: readonly string[];
  readonly draws: DrawnSoFar;
}

export interface Parts {
  readonly road: Road;
  readonly seed: number;
  readonly judged: JudgedCase;
  readonly settled: Settled | undefined;
  readonly table: DrawTable;
  readonly panel?: PanelAnswer | undefined;
  readonly bend?: BendAnswer | undefined;
  readonly frame?: FrameAnswer | undefined;
  readonly plates?: PlatesAnswered | undefined;
}

export function assembled({ road, seed, judged, settled, table, panel, plates, bend, frame }: Parts): Answer {
  const changed = settled && changedIn(settled, judged.answers.setting);
  const { survey, horseIndex } = road;
  const today = settled && fitOf(settled.today, 0);
  const chosen = changed?.after && fitOf(changed.after, changed.setting.changeMm);
  return {
    horse: survey.horses[horseIndex]?.name ?? "",
    saddle: survey.saddle.name,
    horseIndex,
    engine: ENGINE,
    inputHash: hashOf(survey),
    seed,
    answers: judged.answers,
    today,
    chosen,
    follows: followsOf(settled, changed, table),
    placed: settled && placedOf(settled, changed),
    placement: settled && { today: settled.placementToday, after: changed?.placement() },
    gaitMoves: gaitMoves(today, chosen, table, changed?.setting.id ?? ""),
    states: settled?.states(),
    wanted: settled && wantedOf(settled.today, table),
    panel,
    bend,
    frame,
    plates,
    identity: survey.horses[horseIndex]?.identity ?? { transponder: "", ueln: "" },
    body: bodyAdvice(survey, horseIndex),
    settings: road.settings,
    lacking: road.lacking,
    draws: drawnSoFar(settled, changed, table),
  };
}

function followsOf(
  settled: Settled | undefined,
  changed: Changed | undefined,
  table: DrawTable,
): Follows | undefined {
  if (settled === undefined || changed?.after === undefined) return undefined;
  return { moved: movedBy(settled.today, changed.after), doubt: doubtsOf(changed, table).moved };
}

function placedOf({ ready, today }: Settled, changed: Changed | undefined): Answer["placed"] {
  const after = changed?.after;
  return { today: placedAlong(ready.forms, today), chosen: after && placedAlong(ready.forms, after) };
}

/** The head for the warm, wide back where it was traced: the head is set so that it still serves there. */
function wantedOf({ wanted, head: today }: Whole, table: DrawTable): Wanted | undefined {
  const temper = wanted.warm === undefined ? "cold" : "warm";
  const head = wanted[temper];
  if (head === undefined) return undefined;
  const doubt = (what: string) => doubtOf(table, `wanted ${what}, ${temper}`);
  return { head, temper, spreadUMm: doubt("spread"), halfAngleURad: doubt("half-angle"), today };
}

function drawnSoFar(
  settled: Settled | undefined,
  changed: Changed | undefined,
  table: DrawTable,
): DrawnSoFar {
  return {
    count: table.to,
    of: settled === undefined ? 0 : DRAWS,
    done: settled === undefined || table.to === DRAWS,
    resting: {
      today: restingPart(table, "today"),
      after: changed?.after && restingPart(table, changed.setting.id),
    },
  };
}
