import type { GaitMove } from "../answer/gait-moves.ts";
import type { Answer } from "../answer/result.ts";
import { ASSUMED_LOADS, type AssumedLoad } from "../fit/assumed-loads.ts";
import type { GaitFit, RiddenThird } from "../fit/fit.ts";
import { forceCurve, partUnder } from "../fit/force-curve.ts";
import { BEATS, peakRange, type RiddenGait } from "../fit/gaits.ts";
import { type LoadsRead, loadsRead } from "../fit/loads-read.ts";
import { refusalSays } from "../fit/refusal-words.ts";
import type { GaitRow, GaitSheet, GaitThird } from "../report/gait-data.ts";
import type { Survey } from "../survey/case.ts";
import { type Side, THIRDS } from "../terms/places.ts";
import { stateSays } from "./rider-states.ts";

/** Places of a drawn curve. */
const DRAWN = 48;

/** The gaits of today's saddle, what the chosen setting changes in them, and what all of that stands on; undefined where nothing rests. */
export function gaitsOf(survey: Survey, answer: Answer): GaitSheet | undefined {
  const horse = survey.horses[answer.horseIndex];
  const gaits = answer.today?.gaits ?? [];
  if (horse === undefined || gaits.length === 0) return undefined;
  const loads = loadsRead(survey, horse);
  return {
    rows: gaits.flatMap((gait, i) => {
      const ridden = loads.gaits[i];
      return ridden === undefined ? [] : [rowOf(gait, ridden, answer.gaitMoves)];
    }),
    says: [...stateSays(answer, loads), ridgeSays(answer), STANDS_ON],
    assumed: assumedSays(loads),
  };
}

const STANDS_ON =
  "Compares settings on this back under this load; it permits nothing and a low figure promises nothing. Peaks act along the line found at rest, and over the stride the force averages the weight; its course between is assumed. Peaks over 4 cm² are the model's, and no sensor's.";

function rowOf(gait: GaitFit, ridden: RiddenGait, moves: readonly GaitMove[]): GaitRow {
  const own = moves.filter((move) => move.gait === gait.gait);
  const { peak } = ridden;
  const [lo, hi] = peakRange(peak);
  return {
    name: gait.says,
    peak: `${gait.times.toFixed(2)} times the weight (${lo.toFixed(2)} to ${hi.toFixed(2)}), ${BEATS[gait.gait]} a stride${freeSays(gait.times)}; ${peak.source}, ${peak.status}`,
    curves: [gait.times, lo, hi].map(twoBeats),
    thirds: gait.ok ? THIRDS.map((third) => sidesOf(third, gait.thirds, own)) : [],
    why: gait.ok ? undefined : refusalSays(gait.why),
  };
}

/** Under so little of the weight the back counts as free, for the words alone. */
const FREE_UNDER = 0.1;

function freeSays(times: number): string {
  const free = partUnder(forceCurve(times), FREE_UNDER);
  return free === 0 ? "" : `, under a tenth of the weight for ${(100 * free).toFixed(0)} % of it`;
}

function sidesOf(third: string, thirds: readonly RiddenThird[], moves: readonly GaitMove[]) {
  const at = (side: Side) => thirdOf(thirds, moves, third, side);
  return { third, near: at("near"), off: at("off") };
}

function thirdOf(
  thirds: readonly RiddenThird[],
  moves: readonly GaitMove[],
  third: string,
  side: Side,
): GaitThird {
  const found = thirds.find((one) => one.third === third && one.side === side);
  const move = moves.find((one) => one.third === third && one.side === side);
  return {
    meanKPa: found?.meanKPa ?? Number.NaN,
    mostKPa: found?.sensorKPa ?? Number.NaN,
    areaCm2: found?.areaCm2 ?? Number.NaN,
    sharePercent: 100 * (found?.share ?? Number.NaN),
    change: move && { value: move.deltaKPa, u: move.uKPa },
  };
}

/** Two beats from the middle between two peaks, so that both peaks are seen whole. */
function twoBeats(times: number): readonly (readonly [number, number])[] {
  const curve = forceCurve(times);
  return Array.from({ length: DRAWN + 1 }, (_, i) => {
    const part = i / DRAWN;
    return [part, curve((2 * part + 0.5) % 1)] as const;
  });
}

/** Whether anything presses on the ridge, at rest or ridden. */
function ridgeSays({ today, chosen }: Answer): string {
  const area = (fit: Answer["today"]) =>
    Math.max(
      0,
      fit?.rest?.ok ? fit.rest.ridgeCm2 : 0,
      ...(fit?.gaits ?? []).map((gait) => (gait.ok ? gait.ridgeCm2 : 0)),
    );
  const says = (when: string, cm2: number) =>
    cm2 > 0
      ? `${when}: ${cm2.toFixed(1)} cm² of the panels press on spine and ridge.`
      : `${when}: nothing presses on spine and ridge.`;
  return [says("Today", area(today)), ...(chosen ? [says("After the change", area(chosen))] : [])].join(" ");
}

/** Used though no draw needs them. */
const BESIDE_THE_DRAWS: readonly string[] = [
  ASSUMED_LOADS.halfSeatPart.id,
  ASSUMED_LOADS.groundTimes.id,
  ASSUMED_LOADS.groundOutward.id,
  ASSUMED_LOADS.platformTimes.id,
  ASSUMED_LOADS.platformOutward.id,
  ASSUMED_LOADS.mountHandPart.id,
  ASSUMED_LOADS.boneModulusMPa.id,
  ASSUMED_LOADS.boneDeepMm.id,
];

/** What of loads and tissue was not read, each with its range, together under where the range is from. */
function assumedSays({ uncertain }: LoadsRead): readonly string[] {
  const used = new Set([...uncertain.map(({ id }) => id), ...BESIDE_THE_DRAWS]);
  const all = Object.values(ASSUMED_LOADS).filter(({ id }) => used.has(id));
  return [...new Set(all.map(({ source }) => source))].map((from) => {
    const says = all.filter(({ source }) => source === from).map(withRange);
    return `${says.join(", ")} [${from}]`;
  });
}

function withRange({ id, says, base, lo, hi }: AssumedLoad): string {
  const unit = id.split(".").at(-1) ?? "";
  const measure = unit === "mm" || unit === "MPa" ? ` ${unit}` : "";
  return `${says}: ${base}${measure} (${lo} to ${hi})`.replace(/([ (])-/g, "$1−");
}
