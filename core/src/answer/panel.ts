import { spreadOf } from "../engine/quantile.ts";
import type { NoRest, Rest } from "../fit/fit.ts";
import { MESHES, type Mesh } from "../fit/panel-cells.ts";
import type { Answers } from "../judge/judgement.ts";
import { limitRule } from "../judge/limits/all.ts";
import { AS_FOUND, type Moving } from "../reach/move.ts";
import { drawDeviations } from "../shape/draw.ts";
import type { Tree } from "../shape/model.ts";
import type { Survey, SurveyedHorse } from "../survey/case.ts";
import { isRead, type Measured } from "../survey/reading.ts";
import type { ReadToday, Tried } from "../work/panel/evenness.ts";
import { type Fill, filledTree, NO_FILL } from "../work/panel/fill.ts";
import { firstOf, isHollow, kindOf, type PanelFirst, type Recheck, recheckOf } from "../work/panel/kind.ts";
import { type PanelCase, type PanelProposal, proposePanel } from "../work/panel/propose.ts";
import { type Wedge, wedgesOf } from "../work/panel/wedge.ts";
import { DEG_PER_RAD } from "./figures.ts";
import { type Moved, movedBy } from "./follows.ts";
import type { Ready } from "./ready.ts";
import { changedIn, type Settled } from "./settle.ts";
import { movingOf } from "./sweep.ts";
import { inDraw, type Whole, wholeAt } from "./whole.ts";

/** What the fill changes of the whole, against the same saddle unfilled; half of the central 95 % of the draws beside it. */
export interface FillFollows {
  readonly clearanceMm: number;
  readonly clearanceUMm: number | undefined;
  readonly seatDeg: number;
  readonly seatUDeg: number | undefined;
}

export interface PanelWork extends PanelProposal {
  readonly first: readonly PanelFirst[];
  readonly filling: Survey["saddle"]["panel"]["filling"];
  /** The back is hollow behind the shoulder. */
  readonly hollow: boolean;
  readonly recheck: Recheck;
  readonly rest: { readonly before: Rest | NoRest | undefined; readonly after: Rest | NoRest | undefined };
  readonly follows: FillFollows | undefined;
}

/** The panel of this saddle: how its wedge makes the face, and what to do to it where it is the remedy or stands beside it. */
export interface PanelAnswer {
  readonly wedges: readonly Wedge[];
  readonly work: PanelWork | undefined;
}

/** Draws behind the doubt of what a fill changes: differences of one draw are near even, and a few tell (assumption). */
const FILL_DRAWS = 60;

/** Undefined on a flag, or where the bearing was not read. */
export function panelOf(
  survey: Survey,
  settled: Settled | undefined,
  { work, setting }: Answers,
  seed: number,
): PanelAnswer | undefined {
  const horse = settled && survey.horses[settled.ready.horseIndex];
  const changed = settled && changedIn(settled, setting);
  const tree = (changed?.after ?? settled?.today)?.tree;
  if (settled === undefined || horse === undefined || tree === undefined) return undefined;
  const asked = work.id === "panel" || work.also.includes("panel");
  const moving = changed ? movingOf(changed.setting, settled.ready.forms) : AS_FOUND;
  return {
    wedges: wedgesOf(tree),
    work: asked ? workOn(survey, horse, settled.ready, tree, moving, seed) : undefined,
  };
}

/** The saddle of a horse under a setting, ready to be tried with any fill; undefined where its back was not traced. */
export function panelCaseOf(
  survey: Survey,
  horse: SurveyedHorse,
  ready: Ready,
  tree: Tree,
  moving: Moving,
): PanelCase | undefined {
  const { back } = ready.forms;
  if (back === undefined) return undefined;
  const tried = (mesh: Mesh) => (fill: Fill) => triedAs(filledAt(ready, moving, fill, mesh));
  return {
    kind: kindOf(survey, horse),
    tree,
    back,
    read: readOf(survey, horse),
    searched: tried(MESHES.draw),
    fine: tried(MESHES.fine),
  };
}

const filledAt = (ready: Ready, moving: Moving, fill: Fill, mesh: Mesh): Whole | undefined =>
  wholeAt(ready.means, moving, { mesh, panel: (one) => filledTree(one, fill), start: ready.today?.pose });

function workOn(
  survey: Survey,
  horse: SurveyedHorse,
  ready: Ready,
  tree: Tree,
  moving: Moving,
  seed: number,
): PanelWork | undefined {
  const panel = panelCaseOf(survey, horse, ready, tree, moving);
  if (panel === undefined) return undefined;
  const proposal = proposePanel(panel);
  const before = filledAt(ready, moving, NO_FILL, MESHES.fine);
  const after = filledAt(ready, moving, proposal.fill, MESHES.fine);
  const hollow = isHollow(horse);
  return {
    ...proposal,
    first: firstOf(survey.saddle.panel),
    filling: survey.saddle.panel.filling,
    hollow,
    recheck: recheckOf(survey.visit.date, proposal, hollow),
    rest: { before: before?.pressed(), after: after?.pressed() },
    follows:
      proposal.any && before && after
        ? followsOf(ready, moving, proposal.fill, before, after, seed)
        : undefined,
  };
}

const triedAs = (whole: Whole | undefined): Tried => ({
  sections: whole?.sections.cold ?? [],
  rest: whole?.pressed(),
});

const valueOf = (measured: Measured): number | undefined => (isRead(measured) ? measured.value : undefined);

/** The worse side's gap; the seat less the ground's slope; the least clearance over what is inside. */
function readOf({ visit }: Survey, { girthed, riderUp, halfSeat }: SurveyedHorse): ReadToday {
  const spare = [
    { rule: "clearance-girthed", read: valueOf(girthed.clearanceTop) },
    { rule: "clearance-rider-up", read: valueOf(riderUp.clearanceTop) },
    { rule: "clearance-half-seat", read: valueOf(halfSeat.clearanceTop) },
  ].flatMap(({ rule, read }) => (read === undefined ? [] : [read - limitRule(rule).inside[0]]));
  const gaps = [valueOf(girthed.bridgeNear), valueOf(girthed.bridgeOff)].filter((gap) => gap !== undefined);
  const [seat, ground] = [valueOf(riderUp.seatSlope), valueOf(visit.groundSlope)];
  return {
    bridgeMm: gaps.length === 0 ? undefined : Math.max(...gaps),
    rockMm: valueOf(girthed.rock),
    seatDeg: seat === undefined || ground === undefined ? undefined : (seat - ground) * DEG_PER_RAD,
    spareMm: spare.length === 0 ? 0 : Math.min(...spare),
  };
}

function followsOf(
  ready: Ready,
  moving: Moving,
  fill: Fill,
  before: Whole,
  after: Whole,
  seed: number,
): FillFollows | undefined {
  const { clearanceMm, seatDeg } = movedBy(before, after);
  if (clearanceMm === undefined || seatDeg === undefined) return undefined;
  const drawn = Array.from({ length: FILL_DRAWS }, (_, i) => movedIn(ready, moving, fill, seed, i)).flatMap(
    (one) => one ?? [],
  );
  const doubt = (of: (moved: Moved) => number | undefined) => {
    const values = drawn.map(of).filter((value) => value !== undefined);
    return values.length < FILL_DRAWS / 2 ? undefined : spreadOf(values);
  };
  return {
    clearanceMm,
    clearanceUMm: doubt((moved) => moved.clearanceMm),
    seatDeg,
    seatUDeg: doubt((moved) => moved.seatDeg),
  };
}

/** The same draws as the answer's first. */
function movedIn(
  { forms, today }: Ready,
  moving: Moving,
  fill: Fill,
  seed: number,
  index: number,
): Moved | undefined {
  const drawn = inDraw(forms, drawDeviations(forms.uncertain, seed, index));
  const how = { mesh: MESHES.draw, start: today?.pose };
  const before = wholeAt(drawn, moving, how);
  const after = wholeAt(drawn, moving, { ...how, panel: (one) => filledTree(one, fill) });
  return before && after && movedBy(before, after);
}
