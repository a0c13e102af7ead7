import { STRAIN_STOPS } from "../reach/bend/stops.ts";
import { whereToLook } from "../reach/bend/where-to-look.ts";
import { headKind } from "../reach/build.ts";
import { BARRED_CAPS, type Cap, capsPassed, PRESS_CAPS } from "../reach/caps.ts";
import { pressHistory } from "../reach/history.ts";
import type { SurveyedSaddle } from "../survey/case.ts";
import type { SurveyedJob } from "../survey/job.ts";
import { isRead } from "../survey/reading.ts";
import { firstBelief, type PressBelief } from "./belief.ts";
import { headCurves } from "./curves.ts";
import { type Interval, keptBySide, keptNow } from "./foretell.ts";
import { type NextPass, nextPass } from "./next-pass.ts";
import type { Way } from "./press-curve.ts";
import { type Stop, stopsAfter } from "./stops.ts";
import { takenPass } from "./taken-pass.ts";
import { type ToldPass, toldPass } from "./told-pass.ts";

/** A job at the press as far as it has come. Lengths in mm at the tips, counted in its way. */
export interface PressJob {
  readonly way: Way;
  readonly stuff: "wood" | "polymer";
  readonly wantedMm: number;
  /** What of it the caps leave, and those that took the rest. */
  readonly allowedMm: number;
  readonly cappedBy: readonly Cap["id"][];
  readonly passes: readonly ToldPass[];
  readonly keptMm: Interval;
  readonly bySideMm: { readonly near: Interval; readonly off: Interval };
  readonly stops: readonly Stop[];
  /** The pass to make; undefined after a stop, and where none is left to make. */
  readonly next: NextPass | undefined;
  /** Nothing more is to be made: what was wanted and allowed is there, the stop on strain comes first, or the doubt is too wide for a pass that is worth it. */
  readonly ended: "reached" | "strain" | "doubt" | undefined;
  readonly look: readonly string[];
}

export type JobRead =
  | { readonly ok: true; readonly job: PressJob }
  | { readonly ok: false; readonly why: string };

const refused = (why: string): JobRead => ({ ok: false, why });

/** Within this of what was wanted a job has reached it, mm: the expanded uncertainty of a spread on a bare tree. */
const REACHED_MM = 1;

/** Works a job through its passes so far and says the next one. Nothing of it is meant for an owner. */
export function pressJob(saddle: SurveyedSaddle, job: SurveyedJob, seed: number): JobRead {
  const { serial } = saddle.standing;
  if (serial !== "" && job.serial !== "" && serial !== job.serial)
    return refused(`the job is for the tree "${job.serial}", the case for "${serial}"`);
  if (job.wantedMm === 0) return refused("wantedMm is 0: there is nothing to press");
  if (!isRead(job.before.spreadTips))
    return refused("job.before.spreadTips is missing: the spread before the first pass");
  const way: Way = job.wantedMm > 0 ? 1 : -1;
  const drawn = headCurves(saddle, way, seed);
  if (drawn === undefined)
    return refused(
      "this head is not one that is pressed, or it was not read: face, spread, depth and half-angles",
    );
  const datumU = job.before.spreadTips.own;
  const start = firstBelief(drawn.curves, job.state === "dressed", datumU, seed);
  const worked = through(job, way, start, datumU);
  if ("lacking" in worked) return refused(worked.lacking);
  const caps = leftByCaps(saddle, job);
  return { ok: true, job: standing(job, way, drawn.stuff, caps, worked) };
}

interface Worked {
  readonly belief: PressBelief;
  readonly passes: readonly ToldPass[];
}

function through(
  job: SurveyedJob,
  way: Way,
  start: PressBelief,
  datumU: number,
): Worked | { lacking: string } {
  let belief = start;
  const passes: ToldPass[] = [];
  for (const [i, read] of job.passes.entries()) {
    const taken = takenPass(read, job.before, way);
    if (!taken.ok)
      return {
        lacking: `job.passes[${i}] lacks ${taken.lacking.join(" and ")}: without it a pass teaches nothing`,
      };
    const one = toldPass(belief, taken.pass, datumU);
    passes.push(one.told);
    belief = one.belief;
  }
  return { belief, passes };
}

interface Allowed {
  readonly allowedMm: number;
  readonly cappedBy: readonly Cap["id"][];
}

/** Steps in which a wanted change is taken back until no cap is passed, mm. */
const CAP_STEP_MM = 0.5;

function leftByCaps(saddle: SurveyedSaddle, { wantedMm, state }: SurveyedJob): Allowed {
  const caps = headKind(saddle.build) === "barred-polymer" ? BARRED_CAPS : PRESS_CAPS;
  const history = pressHistory(saddle);
  const sign = Math.sign(wantedMm);
  const passed = (mm: number): Cap["id"][] => [
    ...capsPassed(sign * mm, history, caps),
    ...(state === "dressed" && mm > caps.dressed.limit ? [caps.dressed.id] : []),
  ];
  const cappedBy = passed(Math.abs(wantedMm));
  let allowedMm = Math.abs(wantedMm);
  while (allowedMm > 0 && passed(allowedMm).length > 0) allowedMm = Math.max(0, allowedMm - CAP_STEP_MM);
  return { allowedMm, cappedBy };
}

function standing(
  job: SurveyedJob,
  way: Way,
  stuff: "wood" | "polymer",
  caps: Allowed,
  worked: Worked,
): PressJob {
  const { belief, passes } = worked;
  const { allowedMm } = caps;
  const stops = stopsAfter(job, passes, stuff);
  const kept = keptNow(belief);
  const reached = passes.length > 0 && kept.mid >= allowedMm - REACHED_MM;
  const next =
    reached || allowedMm === 0
      ? undefined
      : nextPass(belief, allowedMm, { stretchStop: STRAIN_STOPS[stuff].limit });
  const nothing = next?.boundBy === "nothing-left";
  return {
    way,
    stuff,
    wantedMm: Math.abs(job.wantedMm),
    ...caps,
    passes,
    keptMm: kept,
    bySideMm: keptBySide(belief),
    stops,
    next: stops.length > 0 || nothing ? undefined : next,
    ended: reached ? "reached" : nothing ? whyNothing(belief, allowedMm) : undefined,
    look: whereToLook(stuff, job.wantedMm),
  };
}

/** Were strain no matter, would there be a pass? */
const whyNothing = (belief: PressBelief, allowedMm: number): "strain" | "doubt" =>
  nextPass(belief, allowedMm, { stretchStop: Number.POSITIVE_INFINITY }).boundBy === "nothing-left"
    ? "doubt"
    : "strain";
