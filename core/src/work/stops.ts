import { PI } from "../engine/number/index.ts";
import { limitRule } from "../judge/limits/all.ts";
import type { SurveyedJob, SurveyedPass } from "../survey/job.ts";
import { isRead } from "../survey/reading.ts";
import type { Provenance } from "../terms/provenance.ts";
import type { ToldPass } from "./told-pass.ts";

/** Why no further pass is made, or none before something else is done. */
export interface Stop {
  readonly id: StopId;
  readonly says: string;
  readonly provenance: Provenance;
}
export type StopId =
  | "sign"
  | "not-looked"
  | "more-than-foretold"
  | "unlike"
  | "force-fell"
  | "halves-apart"
  | "cold";

const practice = "common practice, no source";

/** Halves of one head further apart than the judge calls twisted are no matter for a press, rad. */
const APART_RAD = (limitRule("saddle-half-angles").outside[1] * PI) / 180;
/** Polymer below this is not pressed, degrees C. Common practice, no source. */
const COLDEST_C = 15;
/** A further pass that needs less force than this part of the one before has lost something. Assumption. */
const FORCE_KEPT = 0.95;

/** Everything that ends the job after its last pass, worst first; a name or a wish overrides none of it. */
export function stopsAfter(
  job: SurveyedJob,
  told: readonly ToldPass[],
  stuff: "wood" | "polymer",
): readonly Stop[] {
  const last = job.passes.at(-1);
  if (last === undefined) return [];
  return [
    ...signs(last),
    ...taught(told),
    ...forceFell(job.passes),
    ...halvesApart(last),
    ...(stuff === "polymer" && !((last.treeC ?? COLDEST_C - 1) >= COLDEST_C) ? [COLD] : []),
    ...(notLooked(last) ? [NOT_LOOKED] : []),
  ];
}

const COLD: Stop = {
  id: "cold",
  says: `Polymer is not pressed below ${COLDEST_C} °C, nor without its temperature read: hours at 20 °C first.`,
  provenance: practice,
};
const NOT_LOOKED: Stop = {
  id: "not-looked",
  says: "Before another pass: noise, white lines, rivets with plate edges, and layers, each looked at after this one. Not looked is not sound.",
  provenance: practice,
};

function signs({ noise, whiteLine, rivets, layers }: SurveyedPass): readonly Stop[] {
  const found = [
    noise === "yes" ? "noise in the pass" : "",
    whiteLine === "yes" ? "a crack or white line" : "",
    rivets === "failed" || rivets === "doubtful" ? "rivets or plate edges not right" : "",
    layers === "failed" || layers === "doubtful" ? "layers not right" : "",
  ].filter((one) => one !== "");
  if (found.length === 0) return [];
  const says = `STOP: ${found.join(", ")}. Out of the press; not ridden, not pressed on; strip and look, with the case answered anew.`;
  return [{ id: "sign", says, provenance: practice }];
}

const notLooked = ({ noise, whiteLine, rivets, layers }: SurveyedPass): boolean =>
  [noise, whiteLine].some((one) => one === "not-looked" || one === "unknown") ||
  [rivets, layers].some((one) => one === "not-looked");

function taught(told: readonly ToldPass[]): readonly Stop[] {
  const last = told.at(-1);
  if (last === undefined) return [];
  if (last.came === "more") return [MORE];
  return last.unlike ? [UNLIKE] : [];
}

const MORE: Stop = {
  id: "more-than-foretold",
  says: "STOP: more was kept than foretold. Something gave way: strip, look at rivets, layers and plates before anything else.",
  provenance: practice,
};
const UNLIKE: Stop = {
  id: "unlike",
  says: "STOP: no head of the stated ranges does what was read. Measure again; if it stands, this head is not calculated further.",
  provenance: "derived",
};

/** Further than the pass before, with less force. */
function forceFell(passes: readonly SurveyedPass[]): readonly Stop[] {
  const [before, last] = passes.slice(-2);
  if (before?.forceN === undefined || last?.forceN === undefined) return [];
  const further = isRead(last.travel) && isRead(before.travel) && last.travel.value >= before.travel.value;
  if (!further || last.forceN >= FORCE_KEPT * before.forceN) return [];
  return [
    {
      id: "force-fell",
      says: "STOP: force fell although the travel did not. Strip and look.",
      provenance: "assumption",
    },
  ];
}

function halvesApart({ halfAngleNear: near, halfAngleOff: off }: SurveyedPass): readonly Stop[] {
  if (!isRead(near) || !isRead(off) || Math.abs(near.value - off.value) <= APART_RAD) return [];
  const says =
    "STOP: half-angles further apart than a square head's. A press does not cure a twisted head, and one point is never bent.";
  return [{ id: "halves-apart", says, provenance: practice }];
}
