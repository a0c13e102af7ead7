import { combine, gridSurface, type SampleSurface } from "../engine/surface.ts";
import type { SurveyedHorse, Trace } from "../survey/case.ts";
import { isRead } from "../survey/reading.ts";
import { type ByStation, SIDES, STATIONS, type Station } from "../terms/places.ts";
import { eachStation } from "./along.ts";
import { type BackModes, backModes } from "./back-grid.ts";
import { loftError } from "./loft-error.ts";
import { midlineOf } from "./midline.ts";
import type { Back, Deviations, Lacking, Section, Uncertain } from "./model.ts";
import { type FormedSection, formSection, shiftOf } from "./section.ts";
import { POINT_MM, type Temper } from "./trace-doubt.ts";

/** Traces must be this far apart along the back, mm (assumption). */
const APART_MM = 40;
const HOLLOW = "profile.hollow.mm";

/**
 * The back of a horse from its front, mid and rear traces of one temper and its profile. A trace of which nobody
 * asked counts as cold. Where something is missing or cannot be used, its path within the horse.
 */
export function buildBack(horse: SurveyedHorse, temper: Temper): Back | Lacking {
  const formed = eachStation((station) => formAt(horse, station, temper));
  const { front, mid, rear } = formed;
  const lacking = STATIONS.flatMap((station) => lackOf(formed[station]));
  if (horse.profile === undefined) lacking.push("profile");
  if (isLacking(front) || isLacking(mid) || isLacking(rear) || horse.profile === undefined)
    return { lacking };
  const all = { front, mid, rear };
  const xs = eachStation((station) => all[station].section.xMm);
  const order = STATIONS.filter(
    (station, i) => i > 0 && xs[station] - xs[STATIONS[i - 1] ?? "front"] < APART_MM,
  );
  if (order.length > 0) return { lacking: order.map((station) => `traces.${station}.${temper}.behindFront`) };
  const midline = midlineOf(horse.profile, xs.front, xs.rear);
  if (midline === undefined) return { lacking: ["profile.points"] };
  const sides = eachStation((station) => all[station].sides);
  const modes = backModes(sides, xs, midline);
  return {
    sections: eachStation((station) => all[station].section),
    midlineMm: midline,
    surface: (deviations) => surfaceOf(modes, all, deviations),
    uncertain: uncertainOf(all),
    loftErrorMm: loftError(sides, xs),
  };
}

/** The front section alone, where there is no more. */
export function buildFront(horse: SurveyedHorse, temper: Temper): Section | Lacking {
  const formed = formAt(horse, "front", temper);
  return isLacking(formed) ? formed : formed.section;
}

export function isLacking(built: object): built is Lacking {
  return "lacking" in built;
}

const lackOf = (formed: FormedSection | Lacking): readonly string[] =>
  isLacking(formed) ? formed.lacking : [];

function formAt(horse: SurveyedHorse, station: Station, temper: Temper): FormedSection | Lacking {
  const path = `traces.${station}.${temper}`;
  const traces = horse.traces.filter((trace) => trace.station === station && temperOf(trace) === temper);
  const [first] = traces;
  if (first === undefined) return { lacking: [path] };
  const x = isRead(first.behindFront) ? first.behindFront.value : undefined;
  // The front trace is drawn at the front station, which is where x is counted from.
  if (x === undefined && station !== "front") return { lacking: [`${path}.behindFront`] };
  const formed = formSection(traces, x ?? 0, station, temper);
  return typeof formed === "string" ? { lacking: [`${path}.${formed}`] } : formed;
}

const temperOf = (trace: Trace): Temper => (trace.temper === "warm" ? "warm" : "cold");

/** Best estimate plus the scaled modes of the deviations: one sum of arrays. */
function surfaceOf(
  modes: BackModes,
  formed: ByStation<FormedSection>,
  deviations: Deviations,
): SampleSurface {
  const used: Float64Array[] = [];
  const weights: number[] = [];
  const add = (mode: Float64Array, weight: number) => {
    if (weight === 0) return;
    used.push(mode);
    weights.push(weight);
  };
  for (const station of STATIONS) {
    for (const side of SIDES) {
      const { widthMm, tiltRad } = shiftOf(formed[station].ids, side, deviations);
      add(modes.width[station][side], widthMm);
      add(modes.tilt[station][side], tiltRad);
    }
  }
  add(modes.hollow, deviations[HOLLOW] ?? 0);
  const coefficients = new Float64Array(modes.base.length);
  combine(modes.base, used, weights, coefficients);
  return gridSurface({ ...modes.grid, coefficients });
}

function uncertainOf(formed: ByStation<FormedSection>): readonly Uncertain[] {
  const all = STATIONS.flatMap((station) => formed[station].section.uncertain);
  const once = all.filter((one, i) => all.findIndex(({ id }) => id === one.id) === i);
  return [...once, { id: HOLLOW, kind: "normal", mean: 0, sd: POINT_MM }];
}
